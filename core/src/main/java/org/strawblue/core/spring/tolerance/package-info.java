/** What the standards let a made spring differ from its drawing, carried through to its force. */
@NullMarked
package org.strawblue.core.spring.tolerance;

import org.jspecify.annotations.NullMarked;
