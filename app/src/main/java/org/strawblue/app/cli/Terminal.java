package org.strawblue.app.cli;

import java.util.Locale;
import java.util.Map;

/**
 * What the output goes to; the launcher tells.
 *
 * @param interactive whether a person looks at it directly
 * @param columns characters in a line
 * @param trueColour whether it shows any colour
 */
record Terminal(boolean interactive, int columns, boolean trueColour) {

    private static final int USUAL_COLUMNS = 80;
    private static final int LEAST_COLUMNS = 40;

    /** A pipe or a file. */
    static Terminal plain() {
        return new Terminal(false, USUAL_COLUMNS, false);
    }

    static Terminal ofProcess() {
        boolean interactive = Boolean.getBoolean("strawblue.terminal");
        return interactive ? new Terminal(true, toldColumns(), trueColour(System.getenv())) : plain();
    }

    private static int toldColumns() {
        int told = Integer.getInteger("strawblue.columns", USUAL_COLUMNS);
        return told <= 0 ? USUAL_COLUMNS : Math.max(LEAST_COLUMNS, told);
    }

    private static boolean trueColour(Map<String, String> environment) {
        String kind = environment.getOrDefault("COLORTERM", "").toLowerCase(Locale.ROOT);
        return !environment.containsKey("NO_COLOR") && (kind.equals("truecolor") || kind.equals("24bit"));
    }
}
