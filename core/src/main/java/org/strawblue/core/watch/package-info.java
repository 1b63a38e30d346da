/** Two readings of one thermal history, hardness and film colour, against time: when to take the part off the heat. */
@NullMarked
package org.strawblue.core.watch;

import org.jspecify.annotations.NullMarked;
