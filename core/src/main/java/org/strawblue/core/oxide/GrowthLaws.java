package org.strawblue.core.oxide;

import java.util.List;
import org.strawblue.core.source.Basis;
import org.strawblue.core.source.Standing;
import org.strawblue.core.table.Row;
import org.strawblue.core.table.Table;

/** The growth laws of {@code growth_laws.csv}: the central one, its rivals, and two that serve as controls. */
public final class GrowthLaws {

    private static final double NANO = 1e-9;
    private static final List<Row> ROWS =
            Table.of(GrowthLaws.class, "growth_laws.csv").rows();
    private static final GrowthLaw CENTRAL = withRole("central").get(0);
    private static final List<GrowthLaw> RIVALS = withRole("rival");

    private GrowthLaws() {}

    public static GrowthLaw central() {
        return CENTRAL;
    }

    /** Laws that fit the usual chart as well as the central one, and part from it at other times. */
    public static List<GrowthLaw> rivals() {
        return RIVALS;
    }

    /** Any law of the table by its name. @throws IllegalArgumentException where there is none */
    public static GrowthLaw of(String name) {
        return ROWS.stream()
                .filter(r -> r.text("law").equals(name))
                .map(GrowthLaws::law)
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no growth law '" + name + "'"));
    }

    private static List<GrowthLaw> withRole(String role) {
        return ROWS.stream()
                .filter(r -> r.text("role").equals(role))
                .map(GrowthLaws::law)
                .toList();
    }

    private static GrowthLaw law(Row r) {
        String name = r.text("law");
        Basis basis = new Basis("film growth, " + name + " law", r.text("source"), Standing.of(r.text("standing")));
        double thickness = r.number("thickness_nm") * NANO;
        double activation = r.number("activation_J_per_mol");
        double reference = r.number("reference_K");
        return r.text("form").equals("power")
                ? new PowerLaw(name, r.number("exponent"), activation, thickness, r.number("time_s"), reference, basis)
                : new LogarithmicLaw(name, thickness, activation, r.number("time_s"), reference, basis);
    }
}
