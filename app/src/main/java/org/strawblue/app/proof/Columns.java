package org.strawblue.app.proof;

import java.util.List;

/** Sets rows of cells under each other. */
final class Columns {

    private static final String GAP = "  ";

    private Columns() {}

    static String align(List<List<String>> rows) {
        int[] widths = new int[rows.get(0).size()];
        for (List<String> row : rows) {
            for (int i = 0; i < widths.length; i++) {
                widths[i] = Math.max(widths[i], row.get(i).length());
            }
        }
        StringBuilder out = new StringBuilder();
        for (List<String> row : rows) {
            StringBuilder line = new StringBuilder();
            for (int i = 0; i < widths.length; i++) {
                line.append(row.get(i))
                        .append(" ".repeat(widths[i] - row.get(i).length()))
                        .append(GAP);
            }
            out.append(line.toString().stripTrailing()).append('\n');
        }
        return out.toString();
    }
}
