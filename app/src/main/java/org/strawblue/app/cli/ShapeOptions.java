package org.strawblue.app.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.strawblue.core.estimate.Finding;
import org.strawblue.core.part.PartShape;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Phrase;
import picocli.CommandLine.Option;

/** The part's shape: which sizes are given tells which shape it is. */
final class ShapeOptions {

    /** Length over widest size of a part whose ends no longer matter. */
    private static final int LONG = 5;

    @Option(names = "--diameter", paramLabel = "SIZE", description = "A round bar of this diameter.")
    private @Nullable String diameter;

    @Option(names = "--side", paramLabel = "SIZE", description = "A square bar of this side.")
    private @Nullable String side;

    @Option(names = "--thickness", paramLabel = "SIZE", description = "A flat of this thickness, with --width.")
    private @Nullable String thickness;

    @Option(names = "--width", paramLabel = "SIZE", description = "Width of the flat.")
    private @Nullable String width;

    @Option(names = "--outside", paramLabel = "SIZE", description = "A bush or tube of this outside, with --bore.")
    private @Nullable String outside;

    @Option(names = "--bore", paramLabel = "SIZE", description = "Bore of the bush.")
    private @Nullable String bore;

    @Option(names = "--length", paramLabel = "SIZE", description = "Length of the part; a long one if not told.")
    private @Nullable String length;

    @Option(
            names = "--pieces",
            paramLabel = "6x12,8x30",
            description = "A stepped pin: diameter x length of each piece, from the working end on.")
    private @Nullable String pieces;

    /** Whether any size is given. */
    boolean given() {
        return Stream.of(diameter, side, thickness, width, outside, bore, length, pieces)
                .anyMatch(s -> s != null);
    }

    /** Absent, with a problem noted, where the sizes make no shape. */
    Optional<PartShape> shape(Question question) {
        long shapes = Stream.of(diameter, side, thickness, outside, pieces)
                .filter(s -> s != null)
                .count();
        if (shapes != 1) {
            question.missing("--diameter, --side, --thickness, --outside or --pieces", null, "the size of one shape");
        }
        if (pieces != null) {
            return stepped(question, pieces);
        }
        double whole = question.si("--length", length, Dimension.LENGTH).orElseGet(() -> longPart(question));
        if (diameter != null) {
            double size = question.needed("--diameter", diameter, Dimension.LENGTH);
            return made(question, "--diameter", diameter, () -> new PartShape.RoundBar(size, whole));
        }
        if (side != null) {
            double size = question.needed("--side", side, Dimension.LENGTH);
            return made(question, "--side", side, () -> new PartShape.SquareBar(size, whole));
        }
        return thickness != null
                ? flat(question, thickness, whole)
                : outside != null ? tube(question, outside, whole) : Optional.empty();
    }

    /** Beyond a few sections the length no longer matters to heat or quench, so a missing one is no fault. */
    private double longPart(Question question) {
        double widest = Stream.of(diameter, side, thickness, width, outside)
                .mapToDouble(text -> question.si("size", text, Dimension.LENGTH).orElse(0))
                .max()
                .orElse(0);
        question.note(new Finding.Note(
                Phrase.of("No length was given: the part is taken as a long one."),
                Phrase.of("The ends of a short part heat and cool sooner."),
                Phrase.of("Give its length if it is shorter than a few times its section.")));
        return LONG * widest;
    }

    private Optional<PartShape> stepped(Question question, String text) {
        List<double[]> sizes = new ArrayList<>();
        for (String piece : text.split("[,;]")) {
            String[] two = piece.strip().split("\\s*[x×*]\\s*", 2);
            if (two.length < 2) {
                question.problem("--pieces", text, "diameter x length of each piece, as 6x12,8x30", "Mend " + piece);
                return Optional.empty();
            }
            sizes.add(new double[] {
                question.si("--pieces", two[0], Dimension.LENGTH).orElse(0),
                question.si("--pieces", two[1], Dimension.LENGTH).orElse(0)
            });
        }
        return made(
                question,
                "--pieces",
                text,
                () -> new PartShape.SteppedPin(sizes.stream()
                        .map(s -> new PartShape.SteppedPin.Piece(s[0], s[1]))
                        .toList()));
    }

    private Optional<PartShape> flat(Question question, String text, double length) {
        double thick = question.needed("--thickness", text, Dimension.LENGTH);
        double wide = question.needed("--width", width, Dimension.LENGTH);
        return made(question, "--thickness", text, () -> new PartShape.Flat(thick, wide, length));
    }

    private Optional<PartShape> tube(Question question, String text, double length) {
        double out = question.needed("--outside", text, Dimension.LENGTH);
        double in = question.needed("--bore", bore, Dimension.LENGTH);
        return made(question, "--outside", text, () -> new PartShape.Tube(out, in, length));
    }

    /** A shape says itself what sizes it can have. */
    private static Optional<PartShape> made(
            Question question, String option, String text, java.util.function.Supplier<PartShape> shape) {
        if (!question.problems().isEmpty()) {
            return Optional.empty();
        }
        try {
            return Optional.of(shape.get());
        } catch (IllegalArgumentException e) {
            question.problem(option, text, "a shape that can be made: " + e.getMessage(), "Check the sizes.");
            return Optional.empty();
        }
    }
}
