/** Spectra and the eye: the standard observer, lights, the glow of a hot body, colour as numbers and as a screen shows it. */
@NullMarked
package org.strawblue.core.colour;

import org.jspecify.annotations.NullMarked;
