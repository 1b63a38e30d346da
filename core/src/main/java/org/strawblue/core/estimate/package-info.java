/** Central value, 80 % interval and what it rests on; findings that travel with a result. */
@NullMarked
package org.strawblue.core.estimate;

import org.jspecify.annotations.NullMarked;
