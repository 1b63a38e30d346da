/** The whole of a job: what is to be made and with what, and the worked-out card that answers it. */
@NullMarked
package org.strawblue.core.job;

import org.jspecify.annotations.NullMarked;
