package org.strawblue.core.spring;

/** Whole words in a text, capitals or not, the same in every language of the machine. */
final class Words {

    private Words() {}

    static boolean contains(String text, String words) {
        for (int i = 0; i + words.length() <= text.length(); i++) {
            if (text.regionMatches(true, i, words, 0, words.length())
                    && edge(text, i - 1)
                    && edge(text, i + words.length())) {
                return true;
            }
        }
        return false;
    }

    private static boolean edge(String text, int at) {
        return at < 0 || at >= text.length() || !Character.isLetterOrDigit(text.charAt(at));
    }
}
