package org.strawblue.core.colour;

import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.strawblue.core.table.Table;

/** The numbers of {@code constants.csv}, by name. */
final class Constants {

    private static final Map<String, Double> VALUES = Table.of(Constants.class, "constants.csv").rows().stream()
            .collect(Collectors.toUnmodifiableMap(r -> r.text("name"), r -> r.number("value")));

    private Constants() {}

    static double of(String name) {
        return Optional.ofNullable(VALUES.get(name)).orElseThrow(() -> new IllegalStateException("no " + name));
    }

    /** The 3 × 3 matrix whose entries are named {@code name_11} to {@code name_33}. */
    static double[][] matrix(String name) {
        double[][] m = new double[3][3];
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j < 3; j++) {
                m[i][j] = of(name + "_" + (i + 1) + (j + 1));
            }
        }
        return m;
    }
}
