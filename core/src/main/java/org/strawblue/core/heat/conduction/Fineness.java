package org.strawblue.core.heat.conduction;

/**
 * How finely a part is divided.
 *
 * @param sectors over half a round section, or columns over half a rectangle
 * @param rings over the radius, or rows over the thickness
 * @param slices along a rod
 */
public record Fineness(int sectors, int rings, int slices) {

    /** Within some 0.2 K of a mesh twice as fine, see the science book. */
    public static final Fineness USUAL = new Fineness(28, 14, 80);

    public Fineness times(int factor) {
        return new Fineness(sectors * factor, rings * factor, slices * factor);
    }
}
