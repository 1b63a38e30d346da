/** Why a part came out as it did, and what an unknown steel may be: causes weighed by what is known and what is seen. */
@NullMarked
package org.strawblue.core.evidence.diagnosis;

import org.jspecify.annotations.NullMarked;
