package org.strawblue.core.colour;

/** A colour as the eye orders it: CIE 1976 L*, a*, b*, against the white of the light it is seen in. */
public record Lab(double lightness, double a, double b) {

    /** C* = √(a² + b²). */
    public double chroma() {
        return Math.hypot(a, b);
    }

    /** Hue angle [°], 0 red, 90 yellow, 180 green, 270 blue. */
    public double hue() {
        double degrees = Math.toDegrees(Math.atan2(b, a));
        return degrees < 0 ? degrees + 360 : degrees;
    }

    /** ΔE*ab 1976: the plain distance. About 2 is just seen side by side. */
    public double distance(Lab other) {
        return Math.hypot(Math.hypot(lightness - other.lightness, a - other.a), b - other.b);
    }
}
