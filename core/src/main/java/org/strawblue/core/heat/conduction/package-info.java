/** Transient conduction in small steel parts: finite volumes over a section or along a rod, enthalpy as the unknown. */
@NullMarked
package org.strawblue.core.heat.conduction;

import org.jspecify.annotations.NullMarked;
