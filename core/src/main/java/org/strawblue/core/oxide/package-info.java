/** The oxide film a heat leaves on steel: how it grows through a temperature history, and the colour it shows. */
@NullMarked
package org.strawblue.core.oxide;

import org.jspecify.annotations.NullMarked;
