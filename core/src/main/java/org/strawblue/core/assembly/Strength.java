package org.strawblue.core.assembly;

import java.util.List;
import java.util.Optional;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Unit;
import org.strawblue.core.quantity.Units;
import org.strawblue.core.source.Basis;
import org.strawblue.core.source.Standing;
import org.strawblue.core.table.Row;
import org.strawblue.core.table.Table;
import org.strawblue.core.table.Vocabulary;

/**
 * A generic strength of anaerobic thread locking, from {@code locking.csv}.
 *
 * @param breakLoose torque that breaks the reference screw loose [N·m]
 * @param runOn torque that turns it on after that [N·m]
 * @param removed how it comes off
 */
public record Strength(String name, double breakLoose, double runOn, String removed, Basis basis) {

    private static final Unit NEWTON_METRE = Units.of(Dimension.MOMENT, "N·m");
    private static final Vocabulary<Strength> WORDS = new Vocabulary<>();
    private static final List<Strength> ALL = Table.of(Strength.class, "locking.csv").rows().stream()
            .map(Strength::of)
            .toList();

    /** The weakest first. */
    public static List<Strength> all() {
        return ALL;
    }

    public static Optional<Strength> find(String word) {
        return WORDS.meanings(word).stream().findFirst();
    }

    /** Whether it comes off only with heat. */
    public boolean hot() {
        return this.equals(ALL.get(ALL.size() - 1));
    }

    private static Strength of(Row row) {
        String name = row.text("strength");
        Strength strength = new Strength(
                name,
                NEWTON_METRE.toSi(row.number("break_Nm")),
                NEWTON_METRE.toSi(row.number("run_on_Nm")),
                row.text("removed"),
                new Basis(name + "-strength locking", row.text("source"), Standing.of(row.text("standing"))));
        WORDS.add(name, strength);
        for (String also : row.text("also").split("\\|")) {
            WORDS.add(also, strength);
        }
        return strength;
    }
}
