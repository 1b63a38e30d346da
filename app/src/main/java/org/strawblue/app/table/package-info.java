/**
 * One question asked for each row of a CSV file. Input columns are kept, answers added; a bad row gets its finding and
 * does not stop the rest.
 */
@NullMarked
package org.strawblue.app.table;

import org.jspecify.annotations.NullMarked;
