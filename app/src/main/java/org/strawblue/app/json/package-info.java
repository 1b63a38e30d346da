/** Answers and cards as JSON: every number as value, low, high, unit and sources. */
@NullMarked
package org.strawblue.app.json;

import org.jspecify.annotations.NullMarked;
