/** All that was seen of one heat weighed together: temperature, hardness, what each look was worth, which one does not fit. */
@NullMarked
package org.strawblue.core.evidence.judge;

import org.jspecify.annotations.NullMarked;
