/** Winding a spring over an arbor: what springs back, how much wire, how many turns, what heat changes. */
@NullMarked
package org.strawblue.core.spring.wind;

import org.jspecify.annotations.NullMarked;
