package org.strawblue.core.spring;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.strawblue.core.quantity.Band;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Units;
import org.strawblue.core.source.Basis;
import org.strawblue.core.source.Standing;
import org.strawblue.core.table.Row;
import org.strawblue.core.table.Table;

/**
 * A kind of spring wire: its moduli, what stress it bears, how hot it may work.
 *
 * @param name in the trade's words
 * @param words other ways people write it
 * @param density [kg/m³]
 * @param hottest working temperature [K]
 */
public record SpringMaterial(
        Key key,
        String name,
        List<String> words,
        double density,
        double hottest,
        List<Stiffness> stiffnesses,
        List<Allowable> allowables) {

    /** {@code UNKNOWN} stands for wire of which only its springiness is known: wide moduli, the weakest strength. */
    public enum Key {
        MUSIC,
        HARD_DRAWN,
        OIL_TEMPERED,
        STAINLESS,
        PHOSPHOR_BRONZE,
        UNKNOWN
    }

    private static final List<SpringMaterial> ALL = Table.of(SpringMaterial.class, "materials.csv").rows().stream()
            .map(SpringMaterial::read)
            .toList();

    /** Moduli for wire over one diameter and up to another [m], with the 80 % interval of G [Pa]. */
    public record Stiffness(double over, double upto, Moduli moduli, double shearLow, double shearHigh, Basis basis) {}

    /** The share of the strength in one table that the corrected stress may reach. */
    public record Allowable(String strength, double share, Basis basis) {

        Optional<AllowableStress> at(double wire) {
            return StrengthTable.of(strength)
                    .at(wire)
                    .map(s -> new AllowableStress(share * s.least(), s.least(), List.of(s.basis(), basis)));
        }
    }

    public static SpringMaterial of(Key key) {
        return ALL.stream().filter(m -> m.key == key).findFirst().orElseThrow();
    }

    public static List<SpringMaterial> all() {
        return ALL;
    }

    /** The wire people mean by these words; absent where they name none that is known here. */
    public static Optional<SpringMaterial> find(String text) {
        return ALL.stream()
                .filter(m -> m.longestWordIn(text).isPresent())
                .max(Comparator.comparingInt(m -> m.longestWordIn(text).orElse(0)));
    }

    /** The wire of a drawer's spring; {@code UNKNOWN} where its owner does not say or the words mean nothing here. */
    public static SpringMaterial of(MeasuredSpring spring) {
        return spring.seen().wire().or(() -> named(spring)).orElseGet(() -> of(Key.UNKNOWN));
    }

    /** What its owner calls it; absent where nothing known is meant. */
    public static Optional<SpringMaterial> named(MeasuredSpring spring) {
        return spring.material().flatMap(SpringMaterial::find);
    }

    /** For a wire diameter [m]; the nearest row serves beyond the table. */
    public Stiffness stiffness(double wire) {
        int i = 0;
        while (i < stiffnesses.size() - 1 && wire > stiffnesses.get(i).upto()) {
            i++;
        }
        return stiffnesses.get(i);
    }

    /** The same wire with a shear modulus that its owner gives, as a band [Pa]. */
    public SpringMaterial stiffened(Band shear, double wire) {
        Stiffness old = stiffness(wire);
        double times = shear.middle() / old.moduli().shear();
        Moduli moduli = new Moduli(old.moduli().tension() * times, shear.middle());
        Basis given = new Basis("shear modulus as given", "strawblue", Standing.ASSUMED);
        return new SpringMaterial(
                key,
                name,
                words,
                density,
                hottest,
                List.of(new Stiffness(0, Double.POSITIVE_INFINITY, moduli, shear.low(), shear.high(), given)),
                allowables);
    }

    /** The weakest of this wire's rows that covers the diameter [m]; absent where none does. */
    public Optional<AllowableStress> allowable(double wire) {
        return allowables.stream()
                .flatMap(a -> a.at(wire).stream())
                .min(Comparator.comparingDouble(AllowableStress::stress));
    }

    private Optional<Integer> longestWordIn(String text) {
        OptionalDouble longest = words.stream()
                .filter(w -> Words.contains(text, w))
                .mapToDouble(String::length)
                .max();
        return longest.isPresent() ? Optional.of((int) longest.getAsDouble()) : Optional.empty();
    }

    private static SpringMaterial read(Row row) {
        Key key = Key.valueOf(row.text("material"));
        return new SpringMaterial(
                key,
                row.text("name"),
                Arrays.stream(row.optionalText("words").orElse("").split("\\|"))
                        .filter(w -> !w.isEmpty())
                        .toList(),
                row.number("mass_kg_m3"),
                Units.of(Dimension.TEMPERATURE, "°C").toSi(row.number("hottest_C")),
                rowsOf("moduli.csv", key).stream()
                        .map(SpringMaterial::stiffness)
                        .toList(),
                rowsOf("allowables.csv", key).stream()
                        .map(r -> new Allowable(
                                r.text("strength"), r.number("share"), basis("share of strength before set", r)))
                        .toList());
    }

    private static List<Row> rowsOf(String table, Key key) {
        return Table.of(SpringMaterial.class, table).rows().stream()
                .filter(r -> r.text("material").equals(key.name()))
                .toList();
    }

    private static Stiffness stiffness(Row row) {
        double mm = Units.of(Dimension.LENGTH, "mm").factor();
        double gpa = Units.of(Dimension.STRESS, "GPa").factor();
        return new Stiffness(
                row.number("over_mm") * mm,
                row.number("upto_mm") * mm,
                new Moduli(row.number("E_GPa") * gpa, row.number("G_GPa") * gpa),
                row.number("G_low_GPa") * gpa,
                row.number("G_high_GPa") * gpa,
                basis("moduli of spring wire", row));
    }

    private static Basis basis(String what, Row row) {
        return new Basis(what, row.text("source"), Standing.of(row.text("standing")));
    }
}
