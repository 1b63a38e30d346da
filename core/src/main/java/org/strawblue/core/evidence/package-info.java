/** What can be observed of a part: the means at hand to prove how hard it is. */
@NullMarked
package org.strawblue.core.evidence;

import org.jspecify.annotations.NullMarked;
