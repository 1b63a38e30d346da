package org.strawblue.core.fit;

import java.util.List;
import java.util.Optional;
import org.strawblue.core.table.Row;
import org.strawblue.core.table.Table;
import org.strawblue.core.table.Vocabulary;

/**
 * A fit for a purpose, from {@code preferred.csv}: the ten of ANSI B4.2, each with the nearest inch class.
 *
 * @param word the purpose
 * @param iso hole-basis letters and grades
 * @param inch class of ASME B4.1
 * @param use what it does
 */
public record PreferredFit(String word, String iso, String inch, String use) {

    private static final Vocabulary<PreferredFit> WORDS = new Vocabulary<>();

    private static final List<PreferredFit> ALL = Table.of(PreferredFit.class, "preferred.csv").rows().stream()
            .map(PreferredFit::of)
            .toList();

    public static List<PreferredFit> all() {
        return ALL;
    }

    public static Optional<PreferredFit> find(String word) {
        return WORDS.meanings(word).stream().findFirst();
    }

    /** The purpose a designation serves, where it is one of the ten. */
    public static Optional<PreferredFit> designated(String designation) {
        return ALL.stream()
                .filter(p -> p.iso.equals(designation) || p.inch.equals(designation))
                .findFirst();
    }

    public String designation(boolean asInch) {
        return asInch ? inch : iso;
    }

    private static PreferredFit of(Row row) {
        PreferredFit fit = new PreferredFit(row.text("word"), row.text("iso"), row.text("inch"), row.text("use"));
        WORDS.add(fit.word, fit);
        for (String also : row.optionalText("also").orElse(fit.word).split("\\|")) {
            WORDS.add(also, fit);
        }
        return fit;
    }
}
