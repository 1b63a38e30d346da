/** Helical springs: what a measured spring does, and which of them works in a pocket. */
@NullMarked
package org.strawblue.core.spring;

import org.jspecify.annotations.NullMarked;
