/** What the shop's own jobs and logs teach of its ovens, plates, guns, crayons and steels. */
@NullMarked
package org.strawblue.core.evidence.learn;

import org.jspecify.annotations.NullMarked;
