/** The light of hot steel, and the magnet: guides to hardening heat, with their honest width. */
@NullMarked
package org.strawblue.core.glow;

import org.jspecify.annotations.NullMarked;
