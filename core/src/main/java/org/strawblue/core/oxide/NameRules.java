package org.strawblue.core.oxide;

import java.util.List;
import org.strawblue.core.colour.Lab;
import org.strawblue.core.table.Row;
import org.strawblue.core.table.Table;

/** Which of the trade's names a colour bears, by {@code name_rules.csv}: the first rule that fits. */
final class NameRules {

    private static final double NANO = 1e-9;
    private static final List<Rule> RULES = Table.of(NameRules.class, "name_rules.csv").rows().stream()
            .map(NameRules::rule)
            .toList();

    private NameRules() {}

    static ColourName name(Lab lab, double thickness) {
        for (Rule rule : RULES) {
            if (rule.fits(lab, thickness)) {
                return rule.name();
            }
        }
        throw new IllegalStateException("no name for " + lab);
    }

    private record Range(double from, double to) {

        static Range of(Row row, String quantity, String unit) {
            return new Range(
                    row.optionalNumber(quantity + "_from" + unit).orElse(Double.NEGATIVE_INFINITY),
                    row.optionalNumber(quantity + "_to" + unit).orElse(Double.POSITIVE_INFINITY));
        }

        /** Within the range; one whose ends are the wrong way round goes through 0. */
        boolean holds(double value) {
            return from <= to ? from <= value && value < to : from <= value || value < to;
        }
    }

    private record Rule(ColourName name, Range hue, Range lightness, Range chroma, Range thicknessNm) {

        boolean fits(Lab lab, double thickness) {
            return hue.holds(lab.hue())
                    && lightness.holds(lab.lightness())
                    && chroma.holds(lab.chroma())
                    && thicknessNm.holds(thickness / NANO);
        }
    }

    private static Rule rule(Row row) {
        String word = row.text("name");
        ColourName name =
                ColourName.find(word).orElseThrow(() -> new IllegalStateException("no such colour name: " + word));
        return new Rule(
                name,
                Range.of(row, "hue", ""),
                Range.of(row, "lightness", ""),
                Range.of(row, "chroma", ""),
                Range.of(row, "thickness", "_nm"));
    }
}
