package org.strawblue.app.cli;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.strawblue.app.input.QuantityReader;
import org.strawblue.app.input.Size;
import org.strawblue.app.service.FitService;
import org.strawblue.app.service.HardenedFit;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.fit.Expansion;
import org.strawblue.core.fit.Fits;
import org.strawblue.core.fit.Instrument;
import org.strawblue.core.quantity.Dimension;

/** Reads what is asked of a hole and a shaft. */
final class FitQuestion {

    /** A fit written behind the size: 8 mm H7/g6, 3/8 in RC4. */
    private static final Pattern BEHIND = Pattern.compile(
            "(.*\\S)\\s+((?:[A-Z]{1,2}|Js)\\d{1,2}\\s*/\\s*[a-z]{1,2}\\d{1,2}|[RLF][CTN]\\s?\\d{1,2})\\s*");

    private final Question question;
    private final Optional<String> fit;
    private final OptionalDouble nominal;
    private Optional<Estimate> hole = Optional.empty();
    private Optional<Estimate> shaft = Optional.empty();
    private Instrument holeBy = instrument("bore gauge");
    private Instrument shaftBy = instrument("micrometer");
    private Expansion holeMetal = metal("steel");
    private Expansion shaftMetal = metal("steel");
    private OptionalDouble kelvin = OptionalDouble.empty();
    private Optional<HardenedFit> hardened = Optional.empty();

    FitQuestion(Question question, @Nullable String size, @Nullable String fit) {
        this.question = question;
        Matcher behind = BEHIND.matcher(size == null ? "" : size);
        boolean both = behind.matches() && fit == null;
        this.fit = both ? Optional.of(behind.group(2)) : question.named("--fit", fit, Fits::named);
        this.nominal = question.si("--size", both ? behind.group(1) : size, Dimension.LENGTH);
        nominal.ifPresent(d -> positive("--size", size, d));
    }

    void measured(
            @Nullable String holeText,
            @Nullable String holeWith,
            @Nullable String shaftText,
            @Nullable String shaftWith) {
        holeBy = word("--hole-by", holeWith, Instrument::find, Instrument.names(), holeBy);
        shaftBy = word("--shaft-by", shaftWith, Instrument::find, Instrument.names(), shaftBy);
        hole = estimate("--hole", holeText, holeBy);
        shaft = estimate("--shaft", shaftText, shaftBy);
        if (nominal.isEmpty()
                && hole.isEmpty()
                && shaft.isEmpty()
                && question.problems().isEmpty()) {
            question.missing("--size", null, "a size such as 8 mm, or a measured --hole or --shaft");
        }
        boolean pair = hole.isPresent() && shaft.isPresent();
        if (fit.isEmpty() && !pair && question.problems().isEmpty()) {
            question.missing("--fit", null, "a fit such as H7/g6, RC4 or sliding");
        }
    }

    void warm(@Nullable String holeOf, @Nullable String shaftOf, @Nullable String at) {
        holeMetal = word("--hole-metal", holeOf, Expansion::find, Expansion.names(), holeMetal);
        shaftMetal = word("--shaft-metal", shaftOf, Expansion::find, Expansion.names(), shaftMetal);
        kelvin = question.si("--at", at, Dimension.TEMPERATURE);
    }

    void hardened(HardenedOptions options) {
        hardened = options.read(question, holeBy, shaftBy);
    }

    FitService.Asked asked(boolean inch) {
        return new FitService.Asked(
                nominal,
                fit,
                hole,
                shaft,
                hole.isPresent() ? shaftBy : holeBy,
                holeMetal,
                shaftMetal,
                kelvin,
                hardened,
                inch);
    }

    private Optional<Estimate> estimate(String option, @Nullable String text, Instrument by) {
        Optional<Size> read = question.size(option, text);
        return read.map(s -> {
            positive(option, text, s.nominal());
            return s.limits()
                    .map(l -> Estimate.of(Dimension.LENGTH, s.nominal(), l.low(), l.high()))
                    .orElseGet(() -> by.read(s.nominal()));
        });
    }

    private <T> T word(
            String option, @Nullable String text, Function<String, Optional<T>> find, List<String> names, T usual) {
        if (text == null || QuantityReader.notKnown(text)) {
            return usual;
        }
        return question.word(option, text, find.apply(text), () -> String.join(", ", names))
                .orElse(usual);
    }

    private void positive(String option, @Nullable String text, double value) {
        if (!(value > 0)) {
            question.problem(option, String.valueOf(text), "more than 0", "Give a size that can be.");
        }
    }

    private static Instrument instrument(String name) {
        return Instrument.find(name).orElseThrow();
    }

    private static Expansion metal(String name) {
        return Expansion.find(name).orElseThrow();
    }
}
