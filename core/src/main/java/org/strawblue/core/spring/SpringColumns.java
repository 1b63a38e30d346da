package org.strawblue.core.spring;

import java.util.List;

/**
 * A drawer as columns of plain numbers, for a search through very many springs. One row is one spring.
 *
 * @param wire [m]
 * @param outside [m]
 * @param free length [m]
 * @param coils in all [1]
 * @param first end, as {@link EndType#ordinal}; −1 where nobody noted the ends
 * @param second end
 * @param material as {@link SpringMaterial.Key#ordinal}
 */
public record SpringColumns(
        double[] wire, double[] outside, double[] free, double[] coils, byte[] first, byte[] second, byte[] material) {

    /** Room for so many springs. */
    public static SpringColumns ofSize(int n) {
        return new SpringColumns(
                new double[n], new double[n], new double[n], new double[n], new byte[n], new byte[n], new byte[n]);
    }

    public static SpringColumns of(List<MeasuredSpring> drawer) {
        SpringColumns columns = ofSize(drawer.size());
        for (int i = 0; i < drawer.size(); i++) {
            columns.set(i, drawer.get(i));
        }
        return columns;
    }

    private void set(int i, MeasuredSpring spring) {
        wire[i] = spring.wire();
        outside[i] = spring.outsideDiameter();
        free[i] = spring.freeLength();
        coils[i] = spring.totalCoils();
        first[i] = (byte) spring.ends().map(e -> e.first().ordinal()).orElse(-1).intValue();
        second[i] =
                (byte) spring.ends().map(e -> e.second().ordinal()).orElse(-1).intValue();
        material[i] = (byte) SpringMaterial.of(spring).key().ordinal();
    }

    public int size() {
        return wire.length;
    }
}
