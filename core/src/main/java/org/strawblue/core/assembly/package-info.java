/** Putting a small mechanism together: locking threads, oiling slides, blueing and blackening, and what heat does then. */
@NullMarked
package org.strawblue.core.assembly;

import org.jspecify.annotations.NullMarked;
