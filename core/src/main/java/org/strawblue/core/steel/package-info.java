/** What a steel is, how it hardens and how it tempers. */
@NullMarked
package org.strawblue.core.steel;

import org.jspecify.annotations.NullMarked;
