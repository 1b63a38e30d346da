/** The piece being made: its shape, its sizes that matter, what it has to do. */
@NullMarked
package org.strawblue.core.part;

import org.jspecify.annotations.NullMarked;
