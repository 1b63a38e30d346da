package org.strawblue.app.report;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * What the terminal can show.
 *
 * @param columns its width in characters
 * @param styled whether bold and faint letters may be used
 * @param colours whether any colour may be shown
 * @param unicode whether drawing may use more than plain ASCII
 */
public record Screen(int columns, boolean styled, boolean colours, boolean unicode) {

    /** System property that sets the width. */
    public static final String COLUMNS_PROPERTY = "strawblue.columns";

    /** System property that says that the error stream goes to a terminal. */
    public static final String WATCHED_PROPERTY = "strawblue.watched";

    private static final int USUAL = 80;
    private static final int NARROWEST = 40;
    private static final int WIDEST = 120;
    private static final String ESCAPE = "\u001b[";

    public Screen {
        columns = Math.max(NARROWEST, Math.min(WIDEST, columns));
    }

    public Screen(int columns, boolean styled, boolean colours) {
        this(columns, styled, colours, true);
    }

    /** Whether a person sees what is written to the error stream as it comes. */
    public boolean watched() {
        return Boolean.getBoolean(WATCHED_PROPERTY);
    }

    /** What a pipe or a file gets: no escape codes. */
    public static Screen plain(int columns) {
        return new Screen(columns, false, false);
    }

    /**
     * @param environment of the process
     * @param onTerminal whether a person sees the output as it comes
     */
    public static Screen detect(Map<String, String> environment, boolean onTerminal) {
        int columns = width(System.getProperty(COLUMNS_PROPERTY))
                .or(() -> width(environment.get("COLUMNS")))
                .orElse(USUAL);
        boolean plain = !onTerminal
                || !environment.getOrDefault("NO_COLOR", "").isEmpty()
                || environment.getOrDefault("TERM", "dumb").equals("dumb");
        String depth = environment.getOrDefault("COLORTERM", "");
        boolean colours = !plain && (depth.equals("truecolor") || depth.equals("24bit"));
        return new Screen(columns, !plain, colours, onTerminal || utf8(environment));
    }

    /** By the first of the variables that is set, as the C library reads them. */
    private static boolean utf8(Map<String, String> environment) {
        for (String name : new String[] {"LC_ALL", "LC_CTYPE", "LANG"}) {
            String value = environment.getOrDefault(name, "");
            if (!value.isEmpty()) {
                String flat = value.toLowerCase(Locale.ROOT).replace("-", "");
                return flat.contains("utf8");
            }
        }
        return false;
    }

    String strong(String text) {
        return styled ? ESCAPE + "1m" + text + ESCAPE + "0m" : text;
    }

    String faint(String text) {
        return styled ? ESCAPE + "2m" + text + ESCAPE + "0m" : text;
    }

    /** A patch of a colour, one character wide. */
    String patch(String hex) {
        int rgb = Integer.parseInt(hex.substring(1), 16);
        return ESCAPE + "48;2;" + (rgb >> 16 & 255) + ";" + (rgb >> 8 & 255) + ";" + (rgb & 255) + "m " + ESCAPE + "0m";
    }

    private static Optional<Integer> width(@org.jspecify.annotations.Nullable String text) {
        return Optional.ofNullable(text).filter(t -> t.matches("[1-9]\\d{0,4}")).map(Integer::valueOf);
    }
}
