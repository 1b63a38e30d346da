/** Where each number comes from, and how far it may be believed. */
@NullMarked
package org.strawblue.core.source;

import org.jspecify.annotations.NullMarked;
