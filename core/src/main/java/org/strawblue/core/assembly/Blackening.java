package org.strawblue.core.assembly;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.estimate.Finding;
import org.strawblue.core.quantity.Band;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Phrase;
import org.strawblue.core.quantity.Quantity;
import org.strawblue.core.quantity.Unit;
import org.strawblue.core.quantity.Units;
import org.strawblue.core.source.Basis;
import org.strawblue.core.source.Standing;
import org.strawblue.core.table.Row;
import org.strawblue.core.table.Table;
import org.strawblue.core.table.Vocabulary;

/**
 * Δd = 2 t (1 − i): what a dark finish adds to a diameter.
 *
 * <p>t thickness of the layer [m], i share of it that lies where metal was [1]; {@code blackening.csv}.
 *
 * @param layer [m]
 * @param onDiameter growth of an outside diameter, loss of a hole [m]
 * @param bath temperature [K]
 * @param atHome whether a home shop may do it
 */
public record Blackening(String name, Estimate layer, Estimate onDiameter, Band bath, boolean atHome) {

    private static final Unit MICRON = Units.of(Dimension.LENGTH, "µm");
    private static final Unit CELSIUS = Units.of(Dimension.TEMPERATURE, "°C");
    private static final Vocabulary<Blackening> WORDS = new Vocabulary<>();
    private static final List<Blackening> ALL = Table.of(Blackening.class, "blackening.csv").rows().stream()
            .map(Blackening::of)
            .toList();

    public static Optional<Blackening> find(String word) {
        return WORDS.meanings(word).stream().findFirst();
    }

    public static List<String> names() {
        return ALL.stream().map(Blackening::name).toList();
    }

    /**
     * What to mind.
     *
     * @param temper lowest temper of the part [K], absent where it is not hardened
     */
    public List<Finding> findings(Optional<Double> temper) {
        List<Finding> all = new ArrayList<>();
        all.add(
                atHome
                        ? new Finding.Caution(
                                Phrase.of("Blueing and browning solutions are poisonous and corrosive; hot oil burns."),
                                Phrase.of("Some hold selenium or acids, by the maker's sheet."),
                                Phrase.of(
                                        "Gloves, eyes, window; nothing used for food; leave no residue on the slide; dispose of"
                                                + " it as the sheet says."))
                        : new Finding.Caution(
                                Phrase.of("Not in a home shop: this bath is boiling lye and nitrate."),
                                Phrase.of("It erupts with a drop of water, blinds, and burns with aluminium."),
                                Phrase.of(
                                        "Give it to a licensed plater; tell him that the part is hardened and at what temper.")));
        temper.filter(t -> bath.high() > t)
                .ifPresent(t -> all.add(new Finding.Caution(
                        Phrase.of("It tempers the part anew: {} against its {}.", bath, Quantity.temperature(t)),
                        Phrase.of("Whatever is hotter than the last temper softens."),
                        Phrase.of("Take a colder finish, or count it as the temper."))));
        return all;
    }

    private static Blackening of(Row row) {
        Basis basis = new Basis("layer of " + row.text("kind"), row.text("source"), Standing.of(row.text("standing")));
        double low = row.number("low_um");
        double high = row.number("high_um");
        Blackening finish = new Blackening(
                row.text("kind"),
                micron(low, high, basis),
                micron(2 * low * (1 - row.number("inward_high")), 2 * high * (1 - row.number("inward_low")), basis),
                new Band(
                        Dimension.TEMPERATURE,
                        CELSIUS.toSi(row.number("bath_low_C")),
                        CELSIUS.toSi(row.number("bath_high_C"))),
                row.text("home").equals("yes"));
        WORDS.add(finish.name, finish);
        for (String also : row.text("also").split("\\|")) {
            WORDS.add(also, finish);
        }
        return finish;
    }

    private static Estimate micron(double low, double high, Basis basis) {
        return Estimate.of(Dimension.LENGTH, MICRON.toSi((low + high) / 2), MICRON.toSi(low), MICRON.toSi(high), basis);
    }
}
