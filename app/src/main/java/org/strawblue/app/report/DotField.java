package org.strawblue.app.report;

/** A field of characters on which curves are drawn in dots: two by four to a character where it can be, else one. */
final class DotField {

    /** The bits of a braille character by row and column of its dots. */
    private static final int[][] BRAILLE = {{0x01, 0x08}, {0x02, 0x10}, {0x04, 0x20}, {0x40, 0x80}};

    private static final int BLANK = 0x2800;
    private static final char MEETING = '*';

    private final int columns;
    private final int rows;
    private final boolean fine;
    private final char[][] marks;
    private final boolean[][] strong;

    DotField(int columns, int rows, boolean fine) {
        this.columns = columns;
        this.rows = rows;
        this.fine = fine;
        this.marks = new char[rows][columns];
        this.strong = new boolean[rows][columns];
    }

    /** Dots across. */
    int across() {
        return fine ? columns * BRAILLE[0].length : columns;
    }

    /** Dots from top to bottom. */
    int down() {
        return fine ? rows * BRAILLE.length : rows;
    }

    /** @param mark stands for the dot where a character has but one; where two curves meet, a star does */
    void dot(int x, int y, char mark, boolean heavy) {
        if (x < 0 || x >= across() || y < 0 || y >= down()) {
            return;
        }
        int column = fine ? x / BRAILLE[0].length : x;
        int row = fine ? y / BRAILLE.length : y;
        if (fine) {
            int bit = BRAILLE[y % BRAILLE.length][x % BRAILLE[0].length];
            marks[row][column] = (char) (Math.max(BLANK, marks[row][column]) | bit);
        } else if (heavy || empty(column, row)) {
            boolean met = strong[row][column] && marks[row][column] != mark;
            marks[row][column] = met ? MEETING : mark;
        }
        strong[row][column] |= heavy;
    }

    boolean empty(int column, int row) {
        return marks[row][column] == 0;
    }

    /** Whether no curve runs here, but only the edge of an interval. */
    boolean faint(int column, int row) {
        return !strong[row][column];
    }

    char at(int column, int row) {
        return marks[row][column];
    }
}
