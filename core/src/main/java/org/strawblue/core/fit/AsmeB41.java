package org.strawblue.core.fit;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.strawblue.core.estimate.Answer;
import org.strawblue.core.quantity.Band;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Unit;
import org.strawblue.core.quantity.Units;
import org.strawblue.core.source.Basis;
import org.strawblue.core.source.Standing;
import org.strawblue.core.table.Row;
import org.strawblue.core.table.Table;

/**
 * Inch classes of fit: RC 1 to 9, LC 1 to 11, LT 1 to 6, LN 1 to 3, FN 1 to 5; sizes to 1.97 in. Source: ASME B4.1, each row
 * of {@code inch_fits.csv} names its own.
 */
final class AsmeB41 implements FitStandard {

    private static final Pattern CLASS = Pattern.compile("\\s*([RrLlFf][CcTtNn])\\s*-?\\s*(\\d{1,2})\\s*");
    private static final Unit INCH = Units.of(Dimension.LENGTH, "in");
    private static final Unit THOU = Units.of(Dimension.LENGTH, "thou");

    @Override
    public boolean reads(String designation) {
        return CLASS.matcher(designation).matches();
    }

    @Override
    public Answer<Fit> fit(double nominal, String designation) {
        Matcher matcher = CLASS.matcher(designation);
        String name = matcher.matches() ? name(matcher) : designation;
        List<Row> rows = Table.of(AsmeB41.class, "inch_fits.csv").rows().stream()
                .filter(r -> r.text("class").equals(name))
                .toList();
        if (rows.isEmpty()) {
            return Answer.refused(FitFindings.unknown(designation));
        }
        Optional<Row> row = rows.stream().filter(r -> holds(r, nominal)).findFirst();
        return row.map(r -> Answer.of(fit(nominal, name, r)))
                .orElseGet(() -> Answer.refused(FitFindings.outside(
                        nominal,
                        name,
                        INCH.toSi(rows.get(0).number("over_in")),
                        INCH.toSi(rows.get(rows.size() - 1).number("upto_in")))));
    }

    private static String name(Matcher matcher) {
        StringBuilder letters = new StringBuilder();
        matcher.group(1).chars().map(Character::toUpperCase).forEach(c -> letters.append((char) c));
        return letters + Integer.toString(Integer.parseInt(matcher.group(2)));
    }

    private static boolean holds(Row row, double nominal) {
        return Limits.within(nominal, INCH.toSi(row.number("over_in")), INCH.toSi(row.number("upto_in")));
    }

    private static Fit fit(double nominal, String name, Row row) {
        return new Fit(
                name,
                nominal,
                limits(nominal, row, "hole"),
                limits(nominal, row, "shaft"),
                List.of(new Basis("limits of " + name, row.text("source"), Standing.of(row.text("standing")))));
    }

    private static Band limits(double nominal, Row row, String part) {
        return new Band(
                Dimension.LENGTH,
                nominal + THOU.toSi(row.number(part + "_low_thou")),
                nominal + THOU.toSi(row.number(part + "_high_thou")));
    }
}
