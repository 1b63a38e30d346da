/** How far the shipped laws are from measured data. */
@NullMarked
package org.strawblue.benchmarks.accuracy;

import org.jspecify.annotations.NullMarked;
