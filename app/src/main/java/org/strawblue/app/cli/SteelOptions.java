package org.strawblue.app.cli;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.steel.Composition;
import org.strawblue.core.steel.Element;
import org.strawblue.core.steel.Grade;
import org.strawblue.core.steel.Grades;
import org.strawblue.core.steel.Steel;
import picocli.CommandLine.Option;

/** What the part is made of, by a name or by analysis. */
final class SteelOptions {

    private static final String GRADE = "--grade";
    private static final String COMPOSITION = "--composition";

    @Option(
            names = {GRADE, "--steel"},
            paramLabel = "NAME",
            description = "The steel, by any name of the trade: O1, silver steel, 1.2510.")
    private @Nullable String grade;

    @Option(
            names = COMPOSITION,
            paramLabel = "C=0.9,Mn=1.2",
            split = "[,; ]+",
            description = "The steel by analysis, in mass percent.")
    private @Nullable List<String> composition;

    @Option(names = "--as-quenched", paramLabel = "HRC", description = "Its hardness as quenched, if measured.")
    private @Nullable String asQuenched;

    /** Whether anything is said of the steel. */
    boolean given() {
        return grade != null || composition != null;
    }

    /** The same steel with its grade's nominal composition, where it has no other. */
    Steel complete(Steel steel) {
        return steel.composition().isPresent()
                ? steel
                : steel.grade().map(g -> steel.with(Grades.of(g).composition())).orElse(steel);
    }

    Optional<Grade> grade(Question question) {
        return question.named(GRADE, grade, Grades::find);
    }

    /** The steel in hand, or a problem noted. */
    Optional<Steel> steel(Question question) {
        Optional<Grade> named = grade(question);
        Optional<Composition> analysed = composition(question);
        if (grade == null && composition == null) {
            question.missing(GRADE, null, "a steel by name, or by --composition");
        }
        OptionalDouble hrc = question.si("--as-quenched", asQuenched, Dimension.HARDNESS);
        return named.isEmpty() && analysed.isEmpty()
                ? Optional.empty()
                : Optional.of(new Steel(named.map(Grade::name), analysed, hrc, List.of()));
    }

    /** The steel in hand where one is told: a grade by its own curves too. */
    Optional<Steel> known(Question question) {
        return grade == null && composition == null
                ? Optional.empty()
                : steel(question)
                        .map(s -> grade(question)
                                .map(Grade::composition)
                                .map(s::with)
                                .orElse(s));
    }

    /** Chromium content [mass %], 0 where the steel is not told. */
    double chromium(Question question) {
        return composition(question)
                .or(() -> grade(question).map(Grade::composition))
                .map(Composition::cr)
                .orElse(0.0);
    }

    Optional<Composition> composition(Question question) {
        if (composition == null) {
            return Optional.empty();
        }
        int before = question.problems().size();
        Map<Element, Double> percents = new EnumMap<>(Element.class);
        composition.forEach(text -> content(question, text, percents));
        return question.problems().size() > before ? Optional.empty() : whole(question, percents);
    }

    private static Optional<Composition> whole(Question question, Map<Element, Double> percents) {
        try {
            return Optional.of(Composition.of(percents));
        } catch (IllegalArgumentException e) {
            question.problem(COMPOSITION, percents.toString(), "mass percents of a steel", "Check the numbers.");
            return Optional.empty();
        }
    }

    private static void content(Question question, String text, Map<Element, Double> percents) {
        String[] parts = text.split("=", 2);
        Optional<Element> element = Element.find(parts[0]);
        if (parts.length < 2 || element.isEmpty()) {
            question.problem(
                    COMPOSITION, text, "element=percent, such as Mn=1.2", "Known are C Mn Si Cr Ni Mo V W Al Cu.");
            return;
        }
        question.si(COMPOSITION + " " + parts[0], parts[1], Dimension.NUMBER)
                .ifPresent(p -> percents.put(element.get(), p));
    }
}
