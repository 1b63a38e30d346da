package org.strawblue.core.colour;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.hipparchus.analysis.interpolation.LinearInterpolator;
import org.hipparchus.analysis.polynomials.PolynomialSplineFunction;
import org.strawblue.core.source.Basis;
import org.strawblue.core.source.Standing;
import org.strawblue.core.table.Row;
import org.strawblue.core.table.Table;

/** The spectrum of a {@link Light}, made as {@code lights.csv} says, and its white. */
@SuppressWarnings("ArrayRecordComponent") // the array is copied in and out
public record Illuminant(Light light, double[] spectrum, Basis basis) {

    private static final double NANO = 1e-9;
    private static final Map<Light, Illuminant> ALL = load();

    public Illuminant {
        spectrum = spectrum.clone();
    }

    public static Illuminant of(Light light) {
        return java.util.Objects.requireNonNull(ALL.get(light));
    }

    /** Relative power at {@link StandardObserver#wavelengths()}. */
    @Override
    public double[] spectrum() {
        return spectrum.clone();
    }

    /** X, Y, Z of a perfectly white surface, Y = 1. */
    public Tristimulus white() {
        Tristimulus sum = StandardObserver.weigh(spectrum);
        return sum.times(1 / sum.y());
    }

    private static Map<Light, Illuminant> load() {
        Map<Light, Illuminant> all = new EnumMap<>(Light.class);
        for (Row row : Table.of(Illuminant.class, "lights.csv").rows()) {
            Light light = Light.valueOf(row.text("light"));
            all.put(
                    light,
                    new Illuminant(
                            light,
                            spectrum(row),
                            new Basis(
                                    "spectrum of " + light.word(),
                                    row.text("source"),
                                    Standing.of(row.text("standing")))));
        }
        return all;
    }

    private static double[] spectrum(Row row) {
        return switch (row.text("kind")) {
            case "daylight" -> daylight(row.number("a"), row.number("b"));
            case "lamp" -> lamp(row.number("a"), row.number("b"));
            case "led" -> led(row);
            default -> throw new IllegalStateException("no such kind of light: " + row.text("kind"));
        };
    }

    private static double[] daylight(double m1, double m2) {
        List<Row> rows = Table.of(Illuminant.class, "daylight_components.csv").rows();
        double[] wavelengths = new double[rows.size()];
        double[] power = new double[rows.size()];
        for (int i = 0; i < power.length; i++) {
            Row r = rows.get(i);
            wavelengths[i] = r.number("wavelength_nm");
            power[i] = r.number("s0") + m1 * r.number("s1") + m2 * r.number("s2");
        }
        PolynomialSplineFunction line = new LinearInterpolator().interpolate(wavelengths, power);
        return StandardObserver.sample(l -> line.value(Math.rint(l / NANO)));
    }

    private static double[] lamp(double kelvin, double secondConstant) {
        return StandardObserver.sample(l -> 1 / (Math.pow(l / NANO, 5) * Math.expm1(secondConstant / (l * kelvin))));
    }

    private static double[] led(Row r) {
        return StandardObserver.sample(l -> {
            double nm = l / NANO;
            double width = nm < r.number("d") ? r.number("e") : r.number("f");
            return r.number("a") * bell(nm - r.number("b"), r.number("c")) + bell(nm - r.number("d"), width);
        });
    }

    /** A Gaussian of height 1 by its full width at half height. */
    private static double bell(double distance, double fullWidth) {
        return Math.pow(2, -Math.pow(2 * distance / fullWidth, 2));
    }
}
