package org.strawblue.core.steel;

import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.quantity.Band;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Unit;
import org.strawblue.core.quantity.Units;
import org.strawblue.core.source.Basis;
import org.strawblue.core.source.Standing;
import org.strawblue.core.table.Row;
import org.strawblue.core.table.Table;

/** Reads the catalogue's tables. */
final class GradeTables {

    private GradeTables() {}

    static Map<String, Grade> load() {
        Map<String, Draft> drafts = new LinkedHashMap<>();
        for (Row row : table("grades.csv").rows()) {
            drafts.put(row.text("grade"), new Draft(row));
        }
        for (Row row : table("grade-composition.csv").rows()) {
            draft(drafts, row).content(row);
        }
        for (Row row : table("grade-figures.csv").rows()) {
            draft(drafts, row).figure(row);
        }
        for (Row row : table("grade-quenches.csv").rows()) {
            draft(drafts, row).fits.put(Quenchant.Family.of(row.text("family")), QuenchFit.of(row.text("fit")));
        }
        Map<String, Grade> grades = new LinkedHashMap<>();
        drafts.forEach((name, draft) -> grades.put(name, draft.grade()));
        return grades;
    }

    private static Table table(String name) {
        return Table.of(GradeTables.class, name);
    }

    private static Draft draft(Map<String, Draft> drafts, Row row) {
        Draft draft = drafts.get(row.text("grade"));
        if (draft == null) {
            throw new IllegalStateException(row.table() + " line " + row.line() + ": no such grade");
        }
        return draft;
    }

    /** The basis of a row about {@code what}. */
    static Basis basis(Row row, String what) {
        return new Basis(what, row.text("source"), Standing.of(row.text("standing")));
    }

    private static final class Draft {
        private final Row head;
        private final Map<Element, Double> percent = new EnumMap<>(Element.class);
        private final Map<Element, Band> limits = new EnumMap<>(Element.class);
        private final Map<Property, Estimate> figures = new EnumMap<>(Property.class);
        private final Map<Quenchant.Family, QuenchFit> fits = new EnumMap<>(Quenchant.Family.class);
        private final SortedSet<Basis> bases = new TreeSet<>();

        Draft(Row head) {
            this.head = head;
        }

        void content(Row row) {
            Element element = Element.find(row.text("element")).orElseThrow();
            percent.put(element, row.number("nominal_percent"));
            if (row.optionalNumber("low_percent").isPresent()) {
                limits.put(element, new Band(Dimension.NUMBER, row.number("low_percent"), row.number("high_percent")));
            }
            bases.add(basis(row, "composition of " + head.text("grade")));
        }

        void figure(Row row) {
            Property property = Property.of(row.text("property"));
            Unit unit = Units.of(property.dimension(), row.text("unit"));
            double low = unit.toSi(row.number("low"));
            double high = unit.toSi(row.number("high"));
            double value = row.optionalNumber("value").isPresent() ? unit.toSi(row.number("value")) : (low + high) / 2;
            String what = property.word().replace('-', ' ') + " of " + head.text("grade");
            figures.put(property, Estimate.of(property.dimension(), value, low, high, basis(row, what)));
        }

        Grade grade() {
            String quench = head.text("quench");
            return new Grade(
                    head.text("grade"),
                    head.text("title"),
                    head.optionalText("equivalents").orElse(""),
                    quench.equals("none") ? Optional.empty() : Optional.of(Quenchant.Family.of(quench)),
                    head.text("laws").equals("formula"),
                    Composition.of(percent),
                    limits,
                    figures,
                    fits,
                    bases);
        }
    }
}
