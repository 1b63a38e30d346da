package org.strawblue.app.cli;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.strawblue.app.input.Drawer;
import org.strawblue.app.input.DrawerReader;
import org.strawblue.app.input.QuantityReader;
import org.strawblue.app.input.Read;
import org.strawblue.core.quantity.Band;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.spring.Coil;
import org.strawblue.core.spring.EndType;
import org.strawblue.core.spring.Ends;
import org.strawblue.core.spring.MeasuredSpring;
import org.strawblue.core.spring.MeasurementErrors;
import org.strawblue.core.spring.SpringMaterial;
import org.strawblue.core.spring.tolerance.CoilDiameterClass;
import org.strawblue.core.spring.tolerance.MadeToStandard;
import picocli.CommandLine.Option;

/** A measured spring on the command line, read by the reader of drawers as a drawer of one. */
final class SpringOptions {

    @Option(names = "--wire", paramLabel = "SIZE", description = "Wire diameter; with its error: \"1.00 ±0.01 mm\".")
    private @Nullable String wire;

    @Option(names = "--outside", paramLabel = "SIZE", description = "Outside diameter.")
    private @Nullable String outside;

    @Option(names = "--free-length", paramLabel = "SIZE", description = "Length when free.")
    private @Nullable String freeLength;

    @Option(names = "--coils", paramLabel = "N", description = "All coils, tip to tip.")
    private @Nullable String coils;

    @Option(names = "--active-coils", paramLabel = "N", description = "Working coils, in place of all; needs --ends.")
    private @Nullable String active;

    @Option(
            names = "--ends",
            paramLabel = "WORDS",
            description = "closed and ground, closed, open, open and ground; two parted by a stroke.")
    private @Nullable String ends;

    @Option(names = "--material", paramLabel = "WORDS", description = "music wire, stainless, ...")
    private @Nullable String material;

    @Option(
            names = "--made-to",
            paramLabel = "1|2|3",
            description = "Not measured but made to class 1, 2 or 3 (EN 15800): its limits are carried through.")
    private @Nullable Integer madeTo;

    private final Map<String, String> more = new LinkedHashMap<>();

    /** A further column of the drawer, where a command has one. */
    void put(String column, @Nullable String text) {
        if (text != null) {
            more.put(column, text);
        }
    }

    boolean lengthGiven() {
        return freeLength != null;
    }

    /** Absent, with problems noted, where something needed is missing or cannot be read. */
    Optional<MeasuredSpring> spring(Question question, boolean lengthNeeded) {
        need(question, "--wire", wire);
        need(question, "--outside", outside);
        need(question, "--coils", coils == null ? active : coils);
        if (madeTo != null && (madeTo < 1 || madeTo > CoilDiameterClass.values().length)) {
            question.problem("--made-to", madeTo.toString(), "1, 2 or 3", "Choose one of these classes.");
        }
        if (lengthNeeded) {
            need(question, "--free-length", freeLength);
        }
        if (!question.problems().isEmpty()) {
            return Optional.empty();
        }
        MeasurementErrors usual = MeasurementErrors.usual();
        Sized d = sized(question, "--wire", wire, Dimension.LENGTH, usual.wire());
        Sized od = sized(question, "--outside", outside, Dimension.LENGTH, usual.outside());
        Sized l = sized(question, "--free-length", freeLength, Dimension.LENGTH, usual.freeLength());
        Sized n = sized(question, "--coils", coils == null ? active : coils, Dimension.NUMBER, usual.coils());
        Read<Drawer> read = DrawerReader.read("spring", table(question, d, od, l, n), question.units());
        question.problems().addAll(read.problems());
        return read.value().map(Drawer::springs).orElse(List.of()).stream()
                .findFirst()
                .map(s -> s.with(
                        madeTo == null
                                ? new MeasurementErrors(d.error(), od.error(), l.error(), n.error())
                                : made(s, CoilDiameterClass.values()[madeTo - 1])));
    }

    private static MeasurementErrors made(MeasuredSpring s, CoilDiameterClass quality) {
        Ends of = s.ends().orElse(Ends.both(EndType.CLOSED));
        Coil drawn = Coil.of(s.wire(), s.outsideDiameter(), s.freeLength(), s.totalCoils(), of);
        return MadeToStandard.errors(drawn, quality);
    }

    /** A coiled spring of another kind: sizes taken as exact. */
    record Coiled(double wire, double outside, double coils, SpringMaterial material) {}

    Coiled coiled(Question question) {
        double d = question.needed("--wire", wire, Dimension.LENGTH);
        double wide = outside(question);
        double count = question.needed("--coils", coils, Dimension.NUMBER);
        if (question.problems().isEmpty() && !(wide > 2 * d && d > 0 && count > 0)) {
            question.problem("--outside", String.valueOf(outside), "a coil wider than two wires", "Check both sizes.");
        }
        SpringMaterial of = Optional.ofNullable(material)
                .flatMap(SpringMaterial::find)
                .orElse(SpringMaterial.of(SpringMaterial.Key.MUSIC));
        return new Coiled(d, wide, count, of);
    }

    double outside(Question question) {
        return question.needed("--outside", outside, Dimension.LENGTH);
    }

    /** What a size says, and how far it may be off [the core's unit]. */
    private record Sized(@Nullable String text, double error) {}

    private static Sized sized(
            Question question, String option, @Nullable String text, Dimension dimension, double usual) {
        if (text == null || !(text.contains("±") || text.contains("+-") || text.contains("+/-"))) {
            return new Sized(text, usual);
        }
        Optional<Band> band = question.band(option, text, dimension);
        String unit = dimension == Dimension.LENGTH ? " m" : "";
        return band.map(b -> new Sized(plain(b.middle()) + unit, b.width() / 2)).orElse(new Sized(text, usual));
    }

    private String table(Question question, Sized d, Sized od, Sized l, Sized n) {
        Map<String, @Nullable String> cells = new LinkedHashMap<>();
        cells.put("name", "the spring");
        cells.put("wire", d.text());
        cells.put("outside", od.text());
        cells.put("free length", l.text() == null ? closeWound(question, d, n) : l.text());
        cells.put(coils == null ? "active coils" : "coils", n.text());
        cells.put("ends", ends);
        cells.put("material", material);
        cells.putAll(more);
        List<String> row = new ArrayList<>();
        cells.values().forEach(text -> row.add(text == null ? "" : "\"" + text.replace("\"", "\"\"") + "\""));
        String heads = cells.keySet().stream().collect(Collectors.joining(","));
        return heads + "\n" + String.join(",", row) + "\n";
    }

    /** Without a power of ten. */
    private static String plain(double number) {
        return BigDecimal.valueOf(number).toPlainString();
    }

    /** A length that says nothing of the spring: coils with a fifth of a wire between them. */
    private static String closeWound(Question question, Sized d, Sized n) {
        double wire = question.si("--wire", d.text(), Dimension.LENGTH).orElse(0);
        double count = question.si("--coils", n.text(), Dimension.NUMBER).orElse(0);
        return plain((count + 2) * wire * 1.2) + " m";
    }

    private static void need(Question question, String option, @Nullable String text) {
        if (text == null || QuantityReader.notKnown(text)) {
            question.missing(option, text, "a measured size of the spring");
        }
    }
}
