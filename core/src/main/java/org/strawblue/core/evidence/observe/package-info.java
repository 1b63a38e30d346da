/** What was seen, heard or measured of a part on its way through heat. */
@NullMarked
package org.strawblue.core.evidence.observe;

import org.jspecify.annotations.NullMarked;
