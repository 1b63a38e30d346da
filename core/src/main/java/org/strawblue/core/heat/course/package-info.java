/** What a part goes through: one setting after another, and a fast model of what that does to it. */
@NullMarked
package org.strawblue.core.heat.course;

import org.jspecify.annotations.NullMarked;
