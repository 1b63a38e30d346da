package org.strawblue.core.steel;

import java.util.ArrayList;
import java.util.List;
import org.strawblue.core.estimate.Answer;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.estimate.Finding;
import org.strawblue.core.estimate.Normal;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Units;
import org.strawblue.core.source.Basis;
import org.strawblue.core.table.Row;
import org.strawblue.core.table.Table;

/**
 * D_I = f_C · f_Mn · f_Si · f_Ni · f_Cr · f_Mo · f_Cu · f_V, the diameter of the round bar that is half martensite at its centre
 * when its surface is held at the bath's temperature from the first moment.
 *
 * <p>Factors by pieces from {@code a255-factors.csv}, contents [mass %], D_I [in] in the standard, [m] here. Grain number 7;
 * other grains by a factor. Range: C 0.10 to 0.90, Mn to 1.95, Si to 2, Cr to 2.5, Ni to 3.5, Mo to 0.55 (the standard's
 * extended limits). On twelve heats of about 1 % C it came out 1.3 to 1.7 times too large: with carbide left undissolved the
 * result is multiplied by 0.70, with the carbon in solution as its C. Source: ASTM A255.
 */
public final class A255IdealDiameter {

    private static final double INCH = Units.of(Dimension.LENGTH, "in").toSi(1);
    private static final List<Row> FACTORS =
            Table.of(A255IdealDiameter.class, "a255-factors.csv").rows();
    private static final Basis BASIS = GradeTables.basis(FACTORS.get(0), "ideal diameter by A255");
    private static final Law LIMITS =
            new Law("a255-ideal-diameter", java.util.Map.of(), BASIS.source(), BASIS.standing());

    /** D_I [m] of a composition as it stands, grain number 7. */
    public Answer<Estimate> of(Composition composition) {
        List<Finding> stops = LIMITS.outside(composition, "The A255 ideal diameter");
        return stops.isEmpty() ? Answer.of(estimate(product(composition))) : Answer.refused(stops);
    }

    /** D_I [m] of a grade: with its dissolved carbon, and corrected where carbide is left undissolved. */
    public Answer<Estimate> of(Grade grade) {
        Answer<Estimate> plain = of(Austenite.of(grade));
        return grade.composition().c() > Figures.number("hypereutectoid-from")
                ? plain.map(e -> corrected(e, Figures.number("hypereutectoid-factor")))
                : plain;
    }

    /** The factor of D_I for an ASTM grain number. */
    public static double grainFactor(int number) {
        if (number < 7) {
            return Figures.number("grain-" + Math.max(4, number));
        }
        return 1 - Figures.number("grain-per-number") * (number - 7);
    }

    private static double product(Composition composition) {
        double product = INCH;
        for (Element element :
                List.of(Element.C, Element.MN, Element.SI, Element.NI, Element.CR, Element.MO, Element.CU, Element.V)) {
            product *= factor(element, composition.of(element));
        }
        return product;
    }

    private static double factor(Element element, double x) {
        for (Row row : FACTORS) {
            if (row.text("element").equals(element.symbol())
                    && x > row.number("from_percent")
                    && x <= row.number("to_percent")) {
                return row.number("c0") + x * (row.number("c1") + x * (row.number("c2") + x * row.number("c3")));
            }
        }
        throw new IllegalStateException("no A255 factor for " + element + " at " + x);
    }

    private static Estimate estimate(double metres) {
        double spread = Math.exp(Normal.HALF_OF_80 * Figures.number("ideal-ln-sd"));
        return Estimate.of(Dimension.LENGTH, metres, metres / spread, metres * spread, BASIS);
    }

    private static Estimate corrected(Estimate plain, double factor) {
        List<Basis> bases = new ArrayList<>(plain.bases());
        bases.add(Figures.HARDENING.basis("correction for undissolved carbide", "hypereutectoid-factor"));
        return Estimate.of(
                plain.dimension(), plain.value() * factor, plain.low() * factor, plain.high() * factor, bases);
    }
}
