/** Everything a drawer offers for a pocket: springs shimmed, nested, stacked, or wound anew; and what change of it would help. */
@NullMarked
package org.strawblue.core.spring.find;

import org.jspecify.annotations.NullMarked;
