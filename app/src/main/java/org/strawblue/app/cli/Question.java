package org.strawblue.app.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.strawblue.app.input.Expectation;
import org.strawblue.app.input.Place;
import org.strawblue.app.input.Problem;
import org.strawblue.app.input.QuantityReader;
import org.strawblue.app.input.Reading;
import org.strawblue.app.input.Size;
import org.strawblue.app.report.AmountWriter;
import org.strawblue.app.service.Sheet;
import org.strawblue.core.estimate.Answer;
import org.strawblue.core.estimate.Finding;
import org.strawblue.core.job.UnitSystem;
import org.strawblue.core.quantity.Band;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Quantity;

/**
 * Reads what a command was given, piece by piece, and keeps every fault, so that all of them can be told at once. A piece
 * that is missing, not known or faulty reads as absent.
 */
final class Question {

    private final UnitSystem units;
    private final List<Problem> problems = new ArrayList<>();
    private final List<Finding> findings = new ArrayList<>();

    Question(UnitSystem units) {
        this.units = units;
    }

    UnitSystem units() {
        return units;
    }

    List<Problem> problems() {
        return problems;
    }

    /** What was assumed in reading, to be told with the answer. */
    List<Finding> findings() {
        return findings;
    }

    /** Keeps a fault found elsewhere. */
    void problem(Problem problem) {
        problems.add(problem);
    }

    /** Keeps what was assumed in reading, to be told with the answer. */
    void note(Finding finding) {
        findings.add(finding);
    }

    OptionalDouble si(String option, @Nullable String text, Dimension dimension) {
        Optional<Quantity> quantity =
                read(option, text, t -> QuantityReader.quantity(t, Expectation.of(dimension, units)));
        return quantity.isPresent() ? OptionalDouble.of(quantity.get().si()) : OptionalDouble.empty();
    }

    /** As above, for what the question cannot do without; 0 where it is missing, with a problem noted. */
    double needed(String option, @Nullable String text, Dimension dimension) {
        int before = problems.size();
        OptionalDouble value = si(option, text, dimension);
        if (value.isEmpty() && problems.size() == before) {
            missing(option, text, Expectation.of(dimension, units).phrase());
        }
        return value.orElse(0);
    }

    Optional<Band> band(String option, @Nullable String text, Dimension dimension) {
        return read(option, text, t -> QuantityReader.band(t, Expectation.of(dimension, units)));
    }

    /** A size, with limits or a fit behind it. */
    Optional<Size> size(String option, @Nullable String text) {
        return read(option, text, t -> QuantityReader.size(t, Expectation.of(Dimension.LENGTH, units)));
    }

    /** A thing of a catalogue, by any word for it. */
    <T> Optional<T> named(String option, @Nullable String text, java.util.function.Function<String, Answer<T>> find) {
        if (text == null || QuantityReader.notKnown(text)) {
            return Optional.empty();
        }
        Answer<T> answer = find.apply(text);
        if (answer.value().isEmpty()) {
            answer.findings().forEach(f -> problem(option, text, f));
        }
        findings.addAll(answer.value().isPresent() ? answer.findings() : List.of());
        return answer.value();
    }

    /** What was written, unless it says that it is not known. */
    static @Nullable String told(@Nullable String text) {
        return text == null || QuantityReader.notKnown(text) ? null : text;
    }

    /** One of a few words. */
    <T> Optional<T> word(String option, @Nullable String text, Optional<T> found, Supplier<String> choice) {
        if (text != null && found.isEmpty()) {
            problems.add(new Problem(
                    place(option, text), text, "one of " + choice.get(), Optional.empty(), "Choose one of these."));
        }
        return found;
    }

    /** Notes a problem where a size or time that was given is not greater than 0. */
    void positive(String option, @Nullable String text, double value) {
        if (text != null && problems.isEmpty() && !(value > 0)) {
            problem(option, text, "more than 0", "Give a size or a time that can be.");
        }
    }

    void missing(String option, @Nullable String text, String expected) {
        String read = text == null ? "" : text;
        String remedy = text == null
                ? "Add " + option + "."
                : "This question cannot be answered without it: give a likely value, and ask again with others.";
        problems.add(new Problem(place(option, read), read, expected, Optional.empty(), remedy));
    }

    void problem(String option, String text, String expected, String remedy) {
        problems.add(new Problem(place(option, text), text, expected, Optional.empty(), remedy));
    }

    /** The answer, unless something could not be read; what was assumed in reading is told first. */
    Optional<Sheet> answer(Supplier<Sheet> ask) {
        if (!problems.isEmpty()) {
            return Optional.empty();
        }
        Sheet sheet = ask.get();
        List<Finding> all = new ArrayList<>(findings);
        all.addAll(sheet.findings());
        return Optional.of(new Sheet(sheet.title(), sheet.entries(), all));
    }

    private void problem(String option, String text, Finding finding) {
        AmountWriter writer = new AmountWriter(units);
        problem(option, text, writer.write(finding.what()), writer.write(finding.remedy()));
    }

    private <T> Optional<T> read(
            String option, @Nullable String text, java.util.function.Function<String, Reading<T>> reader) {
        if (text == null) {
            return Optional.empty();
        }
        Reading<T> reading = reader.apply(text);
        if (reading instanceof Reading.Fault<T> fault) {
            problems.add(fault.at(place(option, text)));
        }
        return reading.found();
    }

    private static Place place(String option, String text) {
        return new Place(option, text.isEmpty() ? 0 : 1, 1, Math.max(2, text.length() + 1), text);
    }
}
