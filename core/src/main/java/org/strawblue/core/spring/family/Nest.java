package org.strawblue.core.spring.family;

/**
 * F = k₁ s + k₂ max(0, s − g): two compression springs, one inside the other, side by side in their work.
 *
 * <p>s deflection of the longer one [m], g by how much the other is shorter [m]; each carries its own share. They must be
 * wound to opposite hands, or the coils of one fall between those of the other. Source: textbook examples of nested
 * springs.
 *
 * @param gap free length of the outer less that of the inner; below 0 where the inner is the longer [m]
 */
public record Nest(HelicalSpring outer, HelicalSpring inner, double gap) implements AxialSpring {

    private static final double GAP_SHARE = Laws.OF.number("nest_gap_share");

    public static Nest of(HelicalSpring outer, HelicalSpring inner) {
        return new Nest(outer, inner, outer.coil().free() - inner.coil().free());
    }

    @Override
    public double force(double deflection) {
        return outer.force(outerDeflection(deflection)) + inner.force(innerDeflection(deflection));
    }

    /** In the more strained of the two. */
    @Override
    public double stress(double deflection) {
        return Math.max(outer.stress(outerDeflection(deflection)), inner.stress(innerDeflection(deflection)));
    }

    @Override
    public double greatestDeflection() {
        double longest = Math.max(outer.coil().free(), inner.coil().free());
        return longest - Math.max(outer.coil().solid(), inner.coil().solid());
    }

    /** The deflection under a force [N] [m]. */
    public double deflection(double force) {
        double first = gap >= 0 ? outer.rate() : inner.rate();
        double meet = Math.abs(gap);
        return force <= first * meet
                ? force / first
                : (force + (outer.rate() + inner.rate() - first) * meet) / (outer.rate() + inner.rate());
    }

    public double outerDeflection(double deflection) {
        return Math.max(0, gap >= 0 ? deflection : deflection + gap);
    }

    public double innerDeflection(double deflection) {
        return Math.max(0, gap >= 0 ? deflection - gap : deflection);
    }

    /** Room between the coils on each side [m]. */
    public double sideGap() {
        return (outer.coil().inside() - inner.coil().outside()) / 2;
    }

    /** What that room should at least be: half the difference of the wires, from memory [m]. */
    public double leastSideGap() {
        return Math.max(0, GAP_SHARE * (outer.coil().wire() - inner.coil().wire()));
    }
}
