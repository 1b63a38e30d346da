/** Reads the program's own data tables: comma-separated resources with a header row. */
@NullMarked
package org.strawblue.core.table;

import org.jspecify.annotations.NullMarked;
