package org.strawblue.core.colour;

/** Colours for a screen: linear light by the sRGB matrix, clipped to 0…1, then the sRGB curve. */
public final class Srgb {

    private static final double[][] MATRIX = Figures.matrix("srgb");
    private static final double LINEAR_BELOW = Figures.number("srgb_linear_below");
    private static final double LINEAR_SLOPE = Figures.number("srgb_linear_slope");
    private static final double POWER = Figures.number("srgb_power");
    private static final double OFFSET = Figures.number("srgb_offset");

    private Srgb() {}

    /** Linear red, green and blue of a colour under daylight, Y = 1 for white; may lie outside 0…1. */
    public static double[] linear(Tristimulus colour) {
        return Matrix3.times(MATRIX, colour.vector());
    }

    /** "#rrggbb" of a colour under daylight, Y = 1 for white. */
    public static String hex(Tristimulus colour) {
        return hex(linear(colour));
    }

    /** "#rrggbb" of linear red, green and blue. */
    public static String hex(double[] linear) {
        StringBuilder out = new StringBuilder("#");
        for (double share : linear) {
            out.append(twoDigits((int) Math.round(255 * curve(Math.max(0, Math.min(1, share))))));
        }
        return out.toString();
    }

    private static double curve(double linear) {
        return linear <= LINEAR_BELOW ? LINEAR_SLOPE * linear : (1 + OFFSET) * Math.pow(linear, 1 / POWER) - OFFSET;
    }

    private static String twoDigits(int value) {
        return (value < 16 ? "0" : "") + Integer.toHexString(value);
    }
}
