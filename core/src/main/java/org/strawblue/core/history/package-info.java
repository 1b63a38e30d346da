/** Temperature against time at named places of a part: the currency that hardness, colour and evidence all read. */
@NullMarked
package org.strawblue.core.history;

import org.jspecify.annotations.NullMarked;
