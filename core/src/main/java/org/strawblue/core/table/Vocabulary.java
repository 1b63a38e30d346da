package org.strawblue.core.table;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The words people use for things, and what each may mean. Case, spaces, hyphens and dashes do not count. Independent of
 * language settings.
 */
public final class Vocabulary<T> {

    private final Map<String, List<T>> meanings = new LinkedHashMap<>();
    private final Map<String, String> written = new LinkedHashMap<>();

    public void add(String word, T meaning) {
        String bare = bare(word);
        meanings.computeIfAbsent(bare, k -> new ArrayList<>()).add(meaning);
        written.putIfAbsent(bare, word);
    }

    /** What the word may mean: nothing, one thing, or several. */
    public List<T> meanings(String word) {
        return List.copyOf(meanings.getOrDefault(bare(word), List.of()));
    }

    /** The known words most like this one, the likest first, none where nothing is near. */
    public List<String> nearest(String word, int most) {
        String bare = bare(word);
        int reach = Math.max(1, bare.length() / 3);
        return written.keySet().stream()
                .filter(known -> distance(bare, known) <= reach)
                .sorted(Comparator.comparingInt(known -> distance(bare, known)))
                .limit(most)
                .map(written::get)
                .toList();
    }

    private static String bare(String word) {
        StringBuilder bare = new StringBuilder(word.length());
        for (int i = 0; i < word.length(); i = word.offsetByCodePoints(i, 1)) {
            int c = word.codePointAt(i);
            if (counts(c)) {
                bare.appendCodePoint(Character.toLowerCase(c));
            }
        }
        return bare.toString();
    }

    private static boolean counts(int c) {
        return !Character.isWhitespace(c)
                && !Character.isSpaceChar(c)
                && c != '_'
                && Character.getType(c) != Character.DASH_PUNCTUATION;
    }

    /** Letters to change, add, drop or swap with their neighbour to make one word of the other. */
    static int distance(String a, String b) {
        int[][] d = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            for (int j = 0; j <= b.length(); j++) {
                d[i][j] = cell(d, a, b, i, j);
            }
        }
        return d[a.length()][b.length()];
    }

    private static int cell(int[][] d, String a, String b, int i, int j) {
        if (i == 0 || j == 0) {
            return i + j;
        }
        int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
        int least = Math.min(Math.min(d[i - 1][j], d[i][j - 1]) + 1, d[i - 1][j - 1] + change);
        boolean swapped = i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
        return swapped ? Math.min(least, d[i - 2][j - 2] + 1) : least;
    }
}
