package org.strawblue.core.colour;

/**
 * How a surface looks in one light, to an eye used to that light.
 *
 * <p>XYZ(day) = B⁻¹ diag(ρ_day/ρ_light) B · XYZ, ρ = B · white (Bradford, linear form); then L*a*b* against the white of
 * daylight, and sRGB for a screen. A perfect white is L* = 100 and #ffffff in every light.
 */
public final class Appearance {

    private static final Tristimulus DAYLIGHT = Illuminant.of(Light.DAYLIGHT).white();
    private static final double THRESHOLD = Figures.number("lab_threshold");
    private static final double SLOPE = Figures.number("lab_linear_slope");
    private final double[][] adaptation;

    public Appearance(Light light) {
        this.adaptation = adaptation(Illuminant.of(light).white());
    }

    /** The colour as it would look in daylight. */
    public Tristimulus adapted(Tristimulus seen) {
        return Tristimulus.of(Matrix3.times(adaptation, seen.vector()));
    }

    public Lab lab(Tristimulus seen) {
        Tristimulus day = adapted(seen);
        double fx = cubeRoot(day.x() / DAYLIGHT.x());
        double fy = cubeRoot(day.y() / DAYLIGHT.y());
        double fz = cubeRoot(day.z() / DAYLIGHT.z());
        return new Lab(116 * fy - 16, 500 * (fx - fy), 200 * (fy - fz));
    }

    public String hex(Tristimulus seen) {
        return Srgb.hex(adapted(seen));
    }

    private static double cubeRoot(double t) {
        return t > THRESHOLD ? Math.cbrt(t) : (SLOPE * t + 16) / 116;
    }

    private static double[][] adaptation(Tristimulus white) {
        double[][] bradford = Figures.matrix("bradford");
        double[] from = Matrix3.times(bradford, white.vector());
        double[] to = Matrix3.times(bradford, DAYLIGHT.vector());
        double[] gain = {to[0] / from[0], to[1] / from[1], to[2] / from[2]};
        return Matrix3.times(Matrix3.inverse(bradford), Matrix3.times(Matrix3.diagonal(gain), bradford));
    }
}
