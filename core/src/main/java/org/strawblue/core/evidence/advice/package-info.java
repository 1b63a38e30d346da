/** What to do next, by what each mistake would cost. */
@NullMarked
package org.strawblue.core.evidence.advice;

import org.jspecify.annotations.NullMarked;
