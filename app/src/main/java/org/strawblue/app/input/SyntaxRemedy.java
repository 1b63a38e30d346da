package org.strawblue.app.input;

import java.util.Locale;

/** What to do about text that YAML cannot take in, in plain words. */
final class SyntaxRemedy {

    private SyntaxRemedy() {}

    static String of(Place place, String problem) {
        String line = place.text();
        String said = problem.toLowerCase(Locale.ROOT);
        int at = Math.max(0, Math.min(place.column() - 1, line.length()));
        String before = line.substring(0, at);
        String here = line.substring(at);
        if (here.startsWith("\t") || before.contains("\t")) {
            return "Indent with spaces, not tabs.";
        }
        if (before.indexOf('"') >= 0 || before.indexOf('\'') >= 0 || said.contains("quoted")) {
            return "Close the quote, and put the whole value inside: '1/4\"'.";
        }
        if (said.contains("mapping values are not allowed")) {
            return "Two colons in one line, or the line above lacks its colon or stands further left: check both.";
        }
        if (said.contains("block end") || said.contains("block mapping") || said.contains("block sequence")) {
            return "Line up this line with the others of its group, and see that each has  key: value.";
        }
        if (said.contains("flow") || said.contains("',' or")) {
            return "Close the bracket, and put a comma between its items.";
        }
        if (said.contains("could not find expected ':'") || said.contains("simple key")) {
            return "Write a colon and a space after the key.";
        }
        return "Put a value that has special signs in it between single quotes: '>= 58 HRC'.";
    }
}
