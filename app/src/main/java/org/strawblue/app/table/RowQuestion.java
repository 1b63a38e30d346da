package org.strawblue.app.table;

import java.util.List;

/** What is asked of each row. */
interface RowQuestion {

    /** Columns a file must have: of each list, one at least. */
    List<List<String>> needs();

    /** Columns that are added, before {@code finding}. */
    List<String> adds();

    /** The answer to one row; whatever cannot be read is noted in the cells. */
    RowAnswer ask(Cells cells);
}
