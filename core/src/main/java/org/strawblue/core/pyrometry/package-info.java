/** What the shop's temperature indicators tell, and how far each is out. */
@NullMarked
package org.strawblue.core.pyrometry;

import org.jspecify.annotations.NullMarked;
