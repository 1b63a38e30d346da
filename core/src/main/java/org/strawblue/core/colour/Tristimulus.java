package org.strawblue.core.colour;

/** X, Y, Z of the 1931 standard observer; what Y counts is the caller's matter: a share of a white, or cd/m². */
public record Tristimulus(double x, double y, double z) {

    public Tristimulus times(double factor) {
        return new Tristimulus(factor * x, factor * y, factor * z);
    }

    /** Chromaticity x = X/(X + Y + Z). */
    public double chromaticityX() {
        return x / (x + y + z);
    }

    /** Chromaticity y = Y/(X + Y + Z). */
    public double chromaticityY() {
        return y / (x + y + z);
    }

    double[] vector() {
        return new double[] {x, y, z};
    }

    static Tristimulus of(double[] v) {
        return new Tristimulus(v[0], v[1], v[2]);
    }
}
