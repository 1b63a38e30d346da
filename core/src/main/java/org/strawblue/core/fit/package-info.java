/** Sizes: limits and fits, how a part changes when hardened, and the order in which it is finished. */
@NullMarked
package org.strawblue.core.fit;

import org.jspecify.annotations.NullMarked;
