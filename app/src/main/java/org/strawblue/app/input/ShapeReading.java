package org.strawblue.app.input;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.strawblue.core.part.PartShape;
import org.strawblue.core.part.PartShape.Flat;
import org.strawblue.core.part.PartShape.RoundBar;
import org.strawblue.core.part.PartShape.SquareBar;
import org.strawblue.core.part.PartShape.SteppedPin;
import org.strawblue.core.part.PartShape.SteppedPin.Piece;
import org.strawblue.core.part.PartShape.Tube;

/** Reads the shape of a part and its sizes, which must belong together and be possible. */
final class ShapeReading {

    private static final Map<String, List<String>> SIZES = Map.of(
            "round bar", List.of("diameter", "length"),
            "square bar", List.of("side", "length"),
            "flat", List.of("thickness", "width", "length"),
            "tube", List.of("outside", "bore", "length"),
            "stepped pin", List.of("pieces"));
    private static final List<String> ALL =
            List.of("diameter", "side", "thickness", "width", "outside", "bore", "length", "pieces");

    private final Section part;

    ShapeReading(Section part) {
        this.part = part;
    }

    Optional<PartShape> shape() {
        Optional<String> named = part.word("shape");
        if (named.isEmpty()) {
            undescribed();
            return Optional.empty();
        }
        belong(named.get());
        return switch (named.get()) {
            case "round bar" -> bar("diameter").map(s -> new RoundBar(s[0], s[1]));
            case "square bar" -> bar("side").map(s -> new SquareBar(s[0], s[1]));
            case "flat" -> flat();
            case "stepped pin" -> stepped();
            default -> tube();
        };
    }

    private void undescribed() {
        ALL.forEach(this::look); // their own faults are told all the same
        if (!part.has("shape")) {
            part.desk()
                    .problem(
                            part.place(),
                            "no shape",
                            "shape: "
                                    + String.join(
                                            ", ",
                                            SIZES.keySet().stream().sorted().toList()),
                            "Add it here. If it is not known, write  shape: don't know");
        }
    }

    /** Each size of the shape is there, and none of another shape. */
    private void belong(String shape) {
        List<String> wanted = SIZES.getOrDefault(shape, List.of());
        for (String key : ALL) {
            if (part.has(key) && !wanted.contains(key)) {
                look(key);
                part.desk()
                        .problem(
                                part.keyPlace(key),
                                key,
                                "only " + String.join(", ", wanted) + " for a " + shape,
                                "Take this line away, or correct the shape.");
            } else if (!part.has(key) && wanted.contains(key)) {
                part.desk()
                        .problem(
                                part.place(),
                                "no " + key,
                                key + " of the " + shape,
                                "Add it here. If it is not known, write  " + key + ": don't know");
            }
        }
    }

    private void look(String key) {
        if (key.equals("pieces")) {
            pieces();
        } else {
            part.si(key);
        }
    }

    private Optional<PartShape> stepped() {
        List<Optional<Piece>> pieces = pieces();
        return pieces.isEmpty() || pieces.stream().anyMatch(Optional::isEmpty)
                ? Optional.empty()
                : Optional.of(new SteppedPin(pieces.stream().map(Optional::get).toList()));
    }

    private List<Optional<Piece>> pieces() {
        return part.groups("pieces").stream()
                .map(s -> both(s.si("diameter"), s.si("length")).map(p -> new Piece(p[0], p[1])))
                .toList();
    }

    private Optional<double[]> bar(String across) {
        Optional<Double> size = part.si(across);
        Optional<Double> length = orAssumed("length", size, "length over section of a bar or tube");
        return both(size, length);
    }

    private static Optional<double[]> both(Optional<Double> a, Optional<Double> b) {
        return a.isPresent() && b.isPresent() ? Optional.of(new double[] {a.get(), b.get()}) : Optional.empty();
    }

    private Optional<PartShape> flat() {
        Optional<Double> thickness = part.si("thickness");
        Optional<Double> width = orAssumed("width", thickness, "width over thickness of a flat");
        Optional<Double> length = orAssumed("length", width, "length over width of a flat");
        if (thickness.isEmpty() || width.isEmpty() || length.isEmpty()) {
            return Optional.empty();
        }
        if (thickness.get() > width.get()) {
            part.desk()
                    .problem(
                            part.place("thickness"),
                            part.text("thickness").orElse(""),
                            "the smallest of the three sizes",
                            "The thickness is larger than the width: exchange the two.");
            return Optional.empty();
        }
        return Optional.of(new Flat(thickness.get(), width.get(), length.get()));
    }

    private Optional<PartShape> tube() {
        Optional<Double> outside = part.si("outside");
        Optional<Double> bore = part.si("bore");
        Optional<Double> length = orAssumed("length", outside, "length over section of a bar or tube");
        if (outside.isEmpty() || bore.isEmpty() || length.isEmpty()) {
            return Optional.empty();
        }
        if (bore.get() >= outside.get()) {
            part.desk()
                    .problem(
                            part.place("bore"),
                            part.text("bore").orElse(""),
                            "a hole smaller than the outside, "
                                    + part.text("outside").orElse(""),
                            "Check both: the wall would be gone.");
            return Optional.empty();
        }
        return Optional.of(new Tube(outside.get(), bore.get(), length.get()));
    }

    /** A size that is said to be not known is taken in proportion to another; the unknown stays on the list. */
    private Optional<Double> orAssumed(String key, Optional<Double> other, String ratio) {
        boolean unknown = part.scalarNotKnown(key);
        Optional<Double> read = part.si(key);
        if (read.isPresent() || !unknown || other.isEmpty()) {
            return read;
        }
        double factor = Assumed.of(ratio);
        part.desk()
                .note(part.path(key) + " is not known: " + Numbers.show(factor) + " times the other size was taken.");
        return Optional.of(factor * other.get());
    }
}
