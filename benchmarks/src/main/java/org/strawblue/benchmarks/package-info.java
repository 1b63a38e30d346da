/** How long one evaluation takes. The whole process and whole tables are timed by {@code benchmarks/run}. */
@NullMarked
package org.strawblue.benchmarks;

import org.jspecify.annotations.NullMarked;
