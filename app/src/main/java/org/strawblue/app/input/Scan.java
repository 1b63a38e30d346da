package org.strawblue.app.input;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A place in a text that moves on as things are recognised. */
final class Scan {

    final String text;
    int at;

    /** Exotic spaces, degree and minus signs count as the plain ones; every character keeps its place. */
    Scan(String text) {
        this.text = plain(text);
    }

    boolean end() {
        space();
        return at >= text.length();
    }

    void space() {
        while (at < text.length() && Character.isWhitespace(text.charAt(at))) {
            at++;
        }
    }

    boolean startsDigit() {
        return at < text.length() && Numbers.starts(text, at);
    }

    boolean startsZero() {
        return at < text.length() && text.charAt(at) == '0';
    }

    Optional<Matcher> match(Pattern pattern) {
        Matcher matcher = pattern.matcher(text).region(at, text.length());
        matcher.useTransparentBounds(true);
        return matcher.lookingAt() ? Optional.of(matcher) : Optional.empty();
    }

    /** Moves past the first of these words that stands here; a word of letters must not run on into more letters. */
    Optional<String> take(List<String> words) {
        for (String word : words) {
            int end = at + word.length();
            if (text.regionMatches(true, at, word, 0, word.length()) && !runsOn(end)) {
                at = end;
                return Optional.of(word);
            }
        }
        return Optional.empty();
    }

    /** What is left, from here. */
    String rest() {
        return text.substring(at);
    }

    boolean runsOn(int end) {
        return end > 0
                && end < text.length()
                && Character.isLetter(text.charAt(end - 1))
                && Character.isLetter(text.charAt(end));
    }

    /** The end of the word that stands here: up to the next space, digit or sign. */
    int endOfWord() {
        int end = at;
        while (end < text.length() && !Character.isWhitespace(text.charAt(end))) {
            end++;
        }
        return Math.max(end, Math.min(at + 1, text.length()));
    }

    private static String plain(String text) {
        StringBuilder out = new StringBuilder(text);
        for (int i = 0; i < out.length(); i++) {
            out.setCharAt(i, plain(out.charAt(i)));
        }
        return out.toString();
    }

    private static char plain(char c) {
        return switch (c) {
            case '\u00a0', '\u2007', '\u2009', '\u202f', '\u200a', '\u2002', '\u2003' -> ' ';
            case 'º', '˚', '∘' -> '°';
            case '−', '‐', '‑', '‒' -> '-';
            case '⁄', '∕' -> '/';
            case '’', '‘', '′', '´', '`' -> '\'';
            case '“', '”', '″', '‶' -> '"';
            default -> c;
        };
    }
}
