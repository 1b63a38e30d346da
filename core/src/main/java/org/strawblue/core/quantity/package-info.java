/** Numbers with a dimension, in SI; units; sentences that carry numbers until someone chooses the units to print them in. */
@NullMarked
package org.strawblue.core.quantity;

import org.jspecify.annotations.NullMarked;
