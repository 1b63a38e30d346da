/** How the part is heated and cooled: sources, the metal's own properties, times. */
@NullMarked
package org.strawblue.core.heat;

import org.jspecify.annotations.NullMarked;
