package org.strawblue.core.steel;

import org.strawblue.core.quantity.Dimension;

/** How a steel takes a kind of quench: by the catalogue, or, where only its composition is known, by carbon and ideal diameter. */
public final class QuenchFits {

    private QuenchFits() {}

    public static QuenchFit of(Grade grade, Quenchant.Family family) {
        QuenchFit known = grade.fits().get(family);
        return known != null ? known : guessed(grade, family);
    }

    /** Deep-hardening steels of much carbon crack in water; shallow ones are made for it. */
    private static QuenchFit guessed(Grade grade, Quenchant.Family family) {
        double ideal =
                new A255IdealDiameter().of(grade).value().map(d -> d.value()).orElse(Double.MAX_VALUE);
        boolean deep = ideal > Figures.HARDENING.si("cracks-ideal", Dimension.LENGTH);
        boolean sharp = grade.composition().c() >= Figures.number("cracks-carbon");
        return switch (family) {
            case BRINE, WATER -> deep && sharp ? QuenchFit.CRACKS : QuenchFit.MADE_FOR;
            case OIL -> deep ? QuenchFit.MADE_FOR : QuenchFit.THIN;
            case PLATES -> deep ? QuenchFit.SLACK : QuenchFit.THIN;
            case AIR -> deep ? QuenchFit.SLACK : QuenchFit.NEVER;
        };
    }

    /** What a kind of quench costs against the chance of hardening: cracks, warping, smoke. */
    public static double cost(Grade grade, Quenchant.Family family) {
        double own = Figures.number("cost-" + family.word());
        return own
                + switch (of(grade, family)) {
                    case HARSH -> Figures.number("harsh-cost");
                    case CRACKS -> Figures.number("crack-cost");
                    default -> 0;
                };
    }
}
