package org.strawblue.app.input;

/**
 * Where something stands in a file.
 *
 * @param file its name as the person gave it
 * @param line from 1; 0 where the whole file is meant
 * @param column of the first character, from 1
 * @param endColumn just past the last character
 * @param text the whole line, for showing
 */
public record Place(String file, int line, int column, int endColumn, String text) {

    /** The file as a whole. */
    public static Place of(String file) {
        return new Place(file, 0, 0, 0, "");
    }
}
