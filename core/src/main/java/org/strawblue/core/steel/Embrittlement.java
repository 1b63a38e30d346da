package org.strawblue.core.steel;

import java.util.List;
import org.strawblue.core.estimate.Finding;
import org.strawblue.core.quantity.Band;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Phrase;
import org.strawblue.core.quantity.Quantity;
import org.strawblue.core.quantity.Unit;
import org.strawblue.core.quantity.Units;
import org.strawblue.core.table.Row;
import org.strawblue.core.table.Table;

/** Tempering temperatures after which steel can be more brittle than its hardness says. */
final class Embrittlement {

    private static final Unit CELSIUS = Units.of(Dimension.TEMPERATURE, "°C");

    private static final List<Region> REGIONS = Table.of(Embrittlement.class, "embrittlement.csv").rows().stream()
            .map(Embrittlement::region)
            .toList();

    /**
     * @param kind "trough", "slow-cooling" or "flat", the last where tests of the grade show no trough
     * @param grades keys of the grades meant; empty is every other one
     */
    private record Region(String kind, List<String> grades, Band kelvin) {

        boolean of(Steel steel) {
            return steel.grade().map(grades::contains).orElse(false);
        }
    }

    private Embrittlement() {}

    private static Region region(Row row) {
        return new Region(
                row.text("kind"),
                row.optionalText("grades").map(g -> List.of(g.split("\\|"))).orElse(List.of()),
                new Band(Dimension.TEMPERATURE, CELSIUS.toSi(row.number("low_c")), CELSIUS.toSi(row.number("high_c"))));
    }

    /** What must be said of tempering this steel at this temperature [K]. */
    static List<Finding> findings(Steel steel, double kelvin) {
        return REGIONS.stream()
                .filter(r -> r.kelvin().contains(kelvin))
                .filter(r -> r.of(steel) || r.grades().isEmpty() && !named(r, steel))
                .map(r -> finding(r, kelvin))
                .toList();
    }

    /** Whether another row, of the same kind or a test that shows no trough, speaks of this very grade. */
    private static boolean named(Region general, Steel steel) {
        return REGIONS.stream()
                .anyMatch(r -> r.of(steel)
                        && (r.kind().equals(general.kind()) || r.kind().equals("flat"))
                        && general.kind().equals("trough"));
    }

    private static Finding finding(Region region, double kelvin) {
        Quantity here = Quantity.temperature(kelvin);
        return switch (region.kind()) {
            case "trough" ->
                new Finding.Caution(
                        Phrase.of("{} lies in {}, where tempering can leave steel brittle", here, region.kelvin()),
                        Phrase.of(
                                "Carbide films form along the old grain and plate boundaries; a blow may crack what its"
                                        + " hardness says should bend."),
                        Phrase.of(
                                "For a tool that is struck, temper below or above the band; for a cutting edge or a spring"
                                        + " the trade often works inside it."));
            case "flat" ->
                new Finding.Note(
                        Phrase.of("{} lies in {}, a band often called brittle", here, region.kelvin()),
                        Phrase.of("Published notch tests of this very grade show no dip there."),
                        Phrase.of("No need to keep out of it for that reason alone."));
            default ->
                new Finding.Caution(
                        Phrase.of("Cool quickly from {}: {} is passed slowly at a cost", here, region.kelvin()),
                        Phrase.of(
                                "Alloy steels without molybdenum lose toughness when they cool slowly through that band."),
                        Phrase.of("Cool in oil or water after tempering, once the part is simple enough to stand it."));
        };
    }
}
