package org.strawblue.core.spring;

import java.util.Arrays;
import java.util.List;

/**
 * What a wire bears by its diameter, the same as {@link SpringMaterial#allowable}, made ready to be asked a million times:
 * sizes and their logarithms in arrays.
 */
final class AllowableCurve {

    private static final double SLACK = 1e-9;

    private final List<Line> lines;

    private AllowableCurve(List<Line> lines) {
        this.lines = lines;
    }

    /** One table: up to which wire [m], its logarithm, the strength there [Pa], whether it holds as a step. */
    private record Line(double share, double[] wire, double[] log, double[] least, boolean[] step) {

        static Line of(double share, List<StrengthTable.Size> sizes) {
            int n = sizes.size();
            Line line = new Line(share, new double[n], new double[n], new double[n], new boolean[n]);
            for (int i = 0; i < n; i++) {
                line.wire[i] = sizes.get(i).wire();
                line.log[i] = Math.log(sizes.get(i).wire());
                line.least[i] = sizes.get(i).least();
                line.step[i] = sizes.get(i).step();
            }
            return line;
        }

        /** Tensile strength, 0 where the table does not reach. */
        double strength(double d, double logD) {
            double slack = d * SLACK;
            int found = Arrays.binarySearch(wire, d - slack);
            int i = found >= 0 ? found : -found - 1;
            if (i == wire.length) {
                return 0;
            }
            if (step[i] || Math.abs(wire[i] - d) <= slack) {
                return least[i];
            }
            if (i == 0) {
                return 0;
            }
            double at = (logD - log[i - 1]) / (log[i] - log[i - 1]);
            return least[i - 1] + at * (least[i] - least[i - 1]);
        }
    }

    static AllowableCurve of(SpringMaterial material) {
        return new AllowableCurve(material.allowables().stream()
                .map(a -> Line.of(a.share(), StrengthTable.of(a.strength()).sizes()))
                .toList());
    }

    /** Fills {stress borne, tensile strength} [Pa] of the weakest table that knows the wire; false where none does. */
    boolean at(double wire, double[] into) {
        double log = Math.log(wire);
        into[0] = Double.POSITIVE_INFINITY;
        for (int i = 0; i < lines.size(); i++) {
            Line line = lines.get(i);
            double strength = line.strength(wire, log);
            if (strength > 0 && strength * line.share < into[0]) {
                into[0] = strength * line.share;
                into[1] = strength;
            }
        }
        return into[0] < Double.POSITIVE_INFINITY;
    }
}
