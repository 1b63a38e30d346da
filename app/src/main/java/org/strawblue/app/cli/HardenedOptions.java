package org.strawblue.app.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.strawblue.app.input.QuantityReader;
import org.strawblue.app.input.Size;
import org.strawblue.app.service.HardenedFit;
import org.strawblue.core.fit.Instrument;
import org.strawblue.core.fit.LoggedGrowth;
import org.strawblue.core.part.Feature;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.steel.Grade;
import org.strawblue.core.steel.Grades;
import picocli.CommandLine.Option;

/** Which part of a fit is hardened, of what, and what earlier parts did. */
final class HardenedOptions {

    private static final String GREW = "--grew";

    /** "W1 hole: 8.000 to 7.996 mm"; steel and kind may be left out. */
    private static final Pattern EARLIER =
            Pattern.compile("(?:([^:]*):)?\\s*(\\S.*?)\\s*(?:\\bto\\b|->|→|>)\\s*(\\S.*?)\\s*");

    @Option(names = "--grade", paramLabel = "NAME", description = "The steel of the part that is hardened.")
    private @Nullable String grade;

    @Option(names = "--hardened", paramLabel = "WHICH", description = "shaft (if not told), hole, both, none.")
    private @Nullable String which;

    @Option(names = "--in-air", paramLabel = "TIME", description = "Held hot in air for so long; shielded if not told.")
    private @Nullable String air;

    @Option(
            names = GREW,
            paramLabel = "SIZES",
            description = "An earlier part, before and after: \"12.000 to 12.014 mm\", \"W1 hole: 8 to 7.996 mm\"."
                    + " As often as you like.")
    private @Nullable List<String> grew;

    /** Absent where nothing is hardened. */
    Optional<HardenedFit> read(Question question, Instrument holeBy, Instrument shaftBy) {
        Optional<Grade> steel = question.named("--grade", grade, Grades::find);
        String word = which == null || QuantityReader.notKnown(which)
                ? "shaft"
                : which.toLowerCase(Locale.ROOT).strip();
        boolean known = List.of("shaft", "hole", "both", "none").contains(word);
        if (!known) {
            question.problem("--hardened", String.valueOf(which), "shaft, hole, both or none", "Choose one of these.");
        }
        double seconds = question.si("--in-air", air, Dimension.TIME).orElse(0);
        List<LoggedGrowth> log = log(question, steel, holeBy, shaftBy);
        if (steel.isEmpty()) {
            needed(question);
            return Optional.empty();
        }
        boolean both = word.equals("both");
        return word.equals("none") || !known
                ? Optional.empty()
                : Optional.of(new HardenedFit(
                        steel.get(), both || word.equals("shaft"), both || word.equals("hole"), log, seconds));
    }

    private void needed(Question question) {
        if (grade == null && (which != null || grew != null || air != null)) {
            question.missing("--grade", null, "the steel of the part that is hardened");
        }
    }

    private List<LoggedGrowth> log(Question question, Optional<Grade> own, Instrument holeBy, Instrument shaftBy) {
        List<LoggedGrowth> log = new ArrayList<>();
        for (String text : grew == null ? List.<String>of() : grew) {
            Matcher m = EARLIER.matcher(text);
            if (!m.matches()) {
                question.problem(GREW, text, "two sizes such as 12.000 to 12.014 mm", "Write it before and after.");
                continue;
            }
            String head = Optional.ofNullable(m.group(1)).orElse("");
            boolean hole = head.contains("hole") || head.contains("bore");
            String name = head.replace("hole", "").replace("bore", "").strip();
            Optional<Grade> steel = name.isEmpty() ? own : question.named(GREW, name, Grades::find);
            Optional<Size> after = question.size(GREW, m.group(3));
            Optional<Size> before = question.size(GREW, withUnit(m.group(2), m.group(3)));
            Instrument by = hole ? holeBy : shaftBy;
            if (steel.isPresent()
                    && before.isPresent()
                    && after.isPresent()
                    && before.get().nominal() > 0) {
                log.add(new LoggedGrowth(
                        steel.get(),
                        hole ? Feature.Kind.BORE : Feature.Kind.OUTSIDE,
                        by.read(before.get().nominal()),
                        by.read(after.get().nominal())));
            }
        }
        return log;
    }

    /** "12.000 to 12.014 mm": the unit behind the second size is the first one's too. */
    private static String withUnit(String first, String second) {
        boolean bare = first.chars().noneMatch(Character::isLetter) && !first.contains("\"");
        return bare ? first + " " + second.replaceAll("^[\\d.,/\\s-]+", "") : first;
    }
}
