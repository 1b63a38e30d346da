package org.strawblue.app.input;

import java.util.Collection;
import java.util.Comparator;
import java.util.Optional;

/**
 * The known word most like a mistyped one, by the number of letters to add, drop, change or swap with a neighbour
 * (Damerau and Levenshtein, the form in which no letter is touched twice).
 */
final class Nearest {

    private Nearest() {}

    /** The closest candidate, where no more than about one letter in three differs. */
    static Optional<String> of(String word, Collection<String> candidates) {
        if (word.length() > 60) {
            return Optional.empty();
        }
        return candidates.stream()
                .filter(c -> Math.abs(c.length() - word.length()) <= allowed(word, c))
                .map(c -> new Scored(c, distance(word, c)))
                .filter(s -> s.distance <= allowed(word, s.word))
                .min(Comparator.comparingInt(Scored::distance))
                .map(Scored::word);
    }

    private record Scored(String word, int distance) {}

    private static int allowed(String a, String b) {
        return Math.max(a.length(), b.length()) < 2 ? 0 : Math.max(1, Math.min(a.length(), b.length()) / 3);
    }

    static int distance(String a, String b) {
        int[][] d = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            d[i][0] = i;
        }
        for (int j = 0; j <= b.length(); j++) {
            d[0][j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            for (int j = 1; j <= b.length(); j++) {
                d[i][j] = step(a, b, d, i, j);
            }
        }
        return d[a.length()][b.length()];
    }

    private static int step(String a, String b, int[][] d, int i, int j) {
        int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
        int best = Math.min(Math.min(d[i - 1][j] + 1, d[i][j - 1] + 1), d[i - 1][j - 1] + change);
        boolean swapped = i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
        return swapped ? Math.min(best, d[i - 2][j - 2] + 1) : best;
    }
}
