package org.strawblue.core.part;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.strawblue.core.estimate.Answer;
import org.strawblue.core.estimate.Finding;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Phrase;
import org.strawblue.core.quantity.Unit;
import org.strawblue.core.quantity.Units;
import org.strawblue.core.source.Basis;
import org.strawblue.core.source.Standing;
import org.strawblue.core.table.Row;
import org.strawblue.core.table.Table;
import org.strawblue.core.table.Vocabulary;

/**
 * A screw thread: metric, unified, model engineers', BA.
 *
 * @param name as the trade writes it
 * @param major largest diameter [m]
 * @param pitch [m]
 * @param bases empty where both were written out
 */
public record ScrewThread(String name, double major, double pitch, List<Basis> bases) {

    private static final Unit MM = Units.of(Dimension.LENGTH, "mm");
    private static final Unit INCH = Units.of(Dimension.LENGTH, "in");
    private static final Pattern METRIC =
            Pattern.compile("\\s*[Mm]\\s*(\\d+(?:\\.\\d+)?)\\s*[x×*]\\s*(\\d*\\.?\\d+)\\s*");
    private static final Pattern IMPERIAL =
            Pattern.compile("\\s*(\\d+)/(\\d+)\\s*[-x×]\\s*(\\d{2})\\s*(?:tpi|TPI)?\\s*");
    private static final Vocabulary<ScrewThread> WORDS = words();

    public ScrewThread {
        bases = List.copyOf(bases);
    }

    /** By any name of the trade: M4, M4x0.5, 8-32, 1/4-40, 4BA. */
    public static Answer<ScrewThread> find(String text) {
        return WORDS.meanings(text.replace('×', 'x')).stream()
                .findFirst()
                .or(() -> written(text))
                .map(Answer::of)
                .orElseGet(() -> Answer.refused(unknown(text)));
    }

    private static Optional<ScrewThread> written(String text) {
        Matcher metric = METRIC.matcher(text);
        if (metric.matches()) {
            return made(text, MM.toSi(number(metric, 1)), MM.toSi(number(metric, 2)));
        }
        Matcher inch = IMPERIAL.matcher(text);
        return inch.matches() && number(inch, 2) > 0
                ? made(text, INCH.toSi(number(inch, 1) / number(inch, 2)), INCH.toSi(1 / number(inch, 3)))
                : Optional.empty();
    }

    /** A pitch beyond a third of the diameter is no thread of a screw. */
    private static Optional<ScrewThread> made(String text, double major, double pitch) {
        boolean thread = pitch > 0 && pitch * 3 < major;
        return thread ? Optional.of(new ScrewThread(text.strip(), major, pitch, List.of())) : Optional.empty();
    }

    private static double number(Matcher matcher, int group) {
        return Double.parseDouble(matcher.group(group));
    }

    private static Finding unknown(String text) {
        List<String> near = WORDS.nearest(text, 2);
        return new Finding.Stop(
                Phrase.of("a thread such as M4, M4x0.5, 8-32, 1/4-40 or 4BA"),
                Phrase.of("The threads known here are metric, unified, model engineers' and BA, to M12 or 1/2 in."),
                Phrase.of(
                        near.isEmpty()
                                ? "Write it with its pitch."
                                : "Did you mean " + String.join(" or ", near) + "?"));
    }

    private static Vocabulary<ScrewThread> words() {
        Vocabulary<ScrewThread> words = new Vocabulary<>();
        for (Row row : Table.of(ScrewThread.class, "threads.csv").rows()) {
            ScrewThread thread = of(row);
            words.add(thread.name, thread);
            for (String also : row.optionalText("also").orElse(thread.name).split("\\|")) {
                words.add(also, thread);
            }
        }
        return words;
    }

    private static ScrewThread of(Row row) {
        String name = row.text("name");
        Basis basis = new Basis("thread " + name, row.text("source"), Standing.of(row.text("standing")));
        return new ScrewThread(name, MM.toSi(row.number("major_mm")), MM.toSi(row.number("pitch_mm")), List.of(basis));
    }
}
