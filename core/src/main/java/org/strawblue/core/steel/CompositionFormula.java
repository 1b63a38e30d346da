package org.strawblue.core.steel;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.strawblue.core.table.Row;
import org.strawblue.core.table.Table;

/**
 * The fitted formula for one composition: HRC = m₀ + m₁ z + m₂ z², each m a sum of coefficient × content; and the
 * covariance of what the fit leaves open, Σ bᵢⱼ zⁱ z′ʲ.
 */
@SuppressWarnings("ArrayRecordComponent") // never handed out
record CompositionFormula(double[] mean, double[][] open) {

    private static final int POWERS = 3;
    private static final List<Row> TERMS =
            Table.of(CompositionFormula.class, "tempering-formula.csv").rows();
    private static final double[] COEFFICIENTS = column("coefficient_hrc");
    private static final double[][] FACTOR = factor();
    private static final List<ToDoubleFunction<Composition>> CONTENT =
            TERMS.stream().map(r -> content(r.text("term").split(" z\\^")[0])).toList();
    private static final int[] POWER = TERMS.stream()
            .mapToInt(r -> Integer.parseInt(r.text("term").split(" z\\^")[1]))
            .toArray();

    static CompositionFormula of(Composition steel) {
        double[] mean = new double[POWERS];
        double[][] spread = new double[POWERS][TERMS.size()];
        for (int i = 0; i < COEFFICIENTS.length; i++) {
            double content = CONTENT.get(i).applyAsDouble(steel);
            mean[POWER[i]] += COEFFICIENTS[i] * content;
            for (int j = 0; j <= i; j++) {
                spread[POWER[i]][j] += FACTOR[i][j] * content;
            }
        }
        return new CompositionFormula(mean, products(spread));
    }

    double mean(double z) {
        return mean[0] + z * (mean[1] + z * mean[2]);
    }

    double covariance(double z1, double z2) {
        double sum = 0;
        double power = 1;
        for (double[] row : open) {
            sum += power * (row[0] + z2 * (row[1] + z2 * row[2]));
            power *= z1;
        }
        return sum;
    }

    private static ToDoubleFunction<Composition> content(String name) {
        return switch (name) {
            case "1" -> steel -> 1;
            case "sqrt(C)" -> steel -> Math.sqrt(steel.c());
            case "Mo" -> TemperingFigures::molybdenum;
            default -> {
                Element element = Element.find(name).orElseThrow();
                yield steel -> steel.of(element);
            }
        };
    }

    private static double[][] products(double[][] rows) {
        double[][] all = new double[POWERS][POWERS];
        for (int a = 0; a < POWERS; a++) {
            for (int b = 0; b < POWERS; b++) {
                for (int j = 0; j < rows[a].length; j++) {
                    all[a][b] += rows[a][j] * rows[b][j];
                }
            }
        }
        return all;
    }

    private static double[] column(String name) {
        return TERMS.stream().mapToDouble(r -> r.number(name)).toArray();
    }

    private static double[][] factor() {
        double[][] rows = new double[TERMS.size()][TERMS.size()];
        for (int j = 0; j < rows.length; j++) {
            double[] column = column("f" + j);
            for (int i = 0; i < rows.length; i++) {
                rows[i][j] = column[i];
            }
        }
        return rows;
    }
}
