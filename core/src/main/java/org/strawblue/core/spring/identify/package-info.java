/** What an unknown spring is, from what its owner can measure and see: rate, material, whether it has set. */
@NullMarked
package org.strawblue.core.spring.identify;

import org.jspecify.annotations.NullMarked;
