package org.strawblue.core.steel;

import org.strawblue.core.estimate.Constants;
import org.strawblue.core.part.PartShape;
import org.strawblue.core.quantity.Dimension;

/**
 * The endless plate or round bar that cools as the part does.
 *
 * <p>A small part loses heat over its ends too. In the two limits the equal body is known: surface held cold, decay rates of the
 * directions add (π²/t² for a plate of thickness t, 4·2.405²/D² for a bar of diameter D); film alone, surface over volume counts.
 * The body taken is the geometric mean of the two, which is within 12 % of either for the shapes here.
 */
final class Bodies {

    /** 4 ζ², ζ the first zero of J₀. */
    private static final double ROUND = 4 * Math.pow(Grossmann.root(0, Double.MAX_VALUE), 2);

    private static final double PLATE = Math.PI * Math.PI;
    private static final Constants FIGURES = Figures.HARDENING;

    private Bodies() {}

    static Cooling.Body of(PartShape shape) {
        if (shape instanceof PartShape.RoundBar bar) {
            double rate = ROUND / square(bar.diameter()) + PLATE / square(bar.length());
            return bar.length() < bar.diameter() ? plate(rate, shape) : round(rate, shape);
        }
        if (shape instanceof PartShape.SquareBar bar) {
            double side = bar.side() * FIGURES.number("square-as-round");
            double rate = ROUND / square(side) + PLATE / square(bar.length());
            return bar.length() < bar.side() ? plate(rate, shape) : round(rate, shape);
        }
        if (shape instanceof PartShape.Flat flat) {
            double rate = PLATE * (1 / square(flat.thickness()) + 1 / square(flat.width()) + 1 / square(flat.length()));
            boolean wide = Math.min(flat.width(), flat.length()) >= FIGURES.number("flat-from") * flat.thickness();
            return wide ? plate(rate, shape) : round(rate, shape);
        }
        if (shape instanceof PartShape.SteppedPin pin) {
            // judged by its thickest piece, which cools last
            return round(ROUND / square(pin.thickest()) + PLATE / square(pin.length()), shape);
        }
        PartShape.Tube tube = (PartShape.Tube) shape;
        // a narrow bore holds vapour: the wall then cools from outside alone, as half of a plate twice as thick
        double free = Math.min(1, tube.inside() / FIGURES.si("bore-free", Dimension.LENGTH));
        double wall = Math.min(tube.wall() * (2 - free), tube.outside() / Math.sqrt(ROUND / PLATE));
        double thickness = 1 / Math.sqrt(1 / square(wall) + 1 / square(tube.length()));
        return new Cooling.Body(false, thickness / 2);
    }

    private static Cooling.Body plate(double rate, PartShape shape) {
        double cold = Math.sqrt(PLATE / rate);
        double film = 2 * shape.volumeOverSurface();
        return new Cooling.Body(false, Math.sqrt(cold * film) / 2);
    }

    private static Cooling.Body round(double rate, PartShape shape) {
        double cold = Math.sqrt(ROUND / rate);
        double film = 4 * shape.volumeOverSurface();
        return new Cooling.Body(true, Math.sqrt(cold * film) / 2);
    }

    private static double square(double x) {
        return x * x;
    }
}
