/** The families of springs beside the plain compression spring: each with its force, its stress and its limit. */
@NullMarked
package org.strawblue.core.spring.family;

import org.jspecify.annotations.NullMarked;
