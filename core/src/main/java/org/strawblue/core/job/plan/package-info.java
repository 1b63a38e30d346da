/** Works a job out: asks each room its question and puts the answers into the order of work. */
@NullMarked
package org.strawblue.core.job.plan;

import org.jspecify.annotations.NullMarked;
