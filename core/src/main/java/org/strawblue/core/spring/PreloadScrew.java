package org.strawblue.core.spring;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Unit;
import org.strawblue.core.quantity.Units;
import org.strawblue.core.table.Table;

/**
 * ΔF = k p for each turn: a screw behind the spring that sets its preload.
 *
 * @param thread as its owner names it
 * @param pitch how far it goes in a turn [m]
 */
public record PreloadScrew(String thread, double pitch) {

    private static final Pattern METRIC_FINE = Pattern.compile("M\\d+(?:\\.\\d+)?\\s*[x×X*]\\s*(\\d+(?:\\.\\d+)?)");
    private static final Pattern INCH = Pattern.compile(".*?[-\\s](\\d{1,2})(?:\\s*(?:tpi|UNC|UNF|BSW|BSF|ME|UN))?");

    /** From "M6", "M6x0.75", "1/4-20", "10-32 UNF"; absent where it is none of these. */
    public static Optional<PreloadScrew> of(String text) {
        String thread = text.strip();
        Matcher fine = METRIC_FINE.matcher(thread);
        if (fine.matches()) {
            return Optional.of(new PreloadScrew(thread, mm().toSi(Double.parseDouble(fine.group(1)))));
        }
        Optional<PreloadScrew> coarse = Table.of(PreloadScrew.class, "screws.csv").rows().stream()
                .filter(r -> r.text("thread").equalsIgnoreCase(thread))
                .findFirst()
                .map(r -> new PreloadScrew(thread, mm().toSi(r.number("pitch_mm"))));
        return coarse.isPresent() ? coarse : inch(thread);
    }

    private static Optional<PreloadScrew> inch(String thread) {
        Matcher inch = INCH.matcher(thread);
        if (!inch.matches() || Integer.parseInt(inch.group(1)) == 0) {
            return Optional.empty();
        }
        double perInch = Integer.parseInt(inch.group(1));
        return Optional.of(
                new PreloadScrew(thread, Units.of(Dimension.LENGTH, "in").toSi(1 / perInch)));
    }

    /** Force gained by a turn inwards [N]. */
    public Estimate forcePerTurn(Estimate rate) {
        return Estimate.of(
                Dimension.FORCE, rate.value() * pitch, rate.low() * pitch, rate.high() * pitch, rate.bases());
    }

    private static Unit mm() {
        return Units.of(Dimension.LENGTH, "mm");
    }
}
