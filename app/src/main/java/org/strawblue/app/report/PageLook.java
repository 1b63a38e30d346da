package org.strawblue.app.report;

/** What a page carries inside it: style, script, and the two weights of lettering in base 64. */
public record PageLook(String style, String script, String regular, String semibold) {

    /** The whole style sheet, lettering first. */
    public String sheet() {
        return face(regular, 400) + face(semibold, 600) + style;
    }

    private static String face(String base64, int weight) {
        return "@font-face{font-family:\"Strawblue Card\";font-weight:" + weight + ";src:url(data:font/woff2;base64,"
                + base64 + ") format(\"woff2\")}\n";
    }
}
