package org.strawblue.app.service;

import java.util.Optional;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.quantity.Band;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Phrase;
import org.strawblue.core.quantity.Unit;
import org.strawblue.core.quantity.Units;
import org.strawblue.core.steel.Element;
import org.strawblue.core.steel.Grade;
import org.strawblue.core.steel.Grades;
import org.strawblue.core.steel.Property;

/** Questions about the catalogue of steels. */
public final class GradeService {

    private static final Unit PERCENT = Units.of(Dimension.FRACTION, "%");

    private GradeService() {}

    /** The catalogue, a line for each steel. */
    public static Sheet all() {
        Sheet.Builder sheet = Sheet.titled("The steels known here");
        Grades.all().forEach(g -> sheet.add(new Entry.Words(g.name(), g.name(), Phrase.of(line(g)))));
        return sheet.build();
    }

    private static String line(Grade grade) {
        String near = grade.equivalents();
        return near.isEmpty() ? grade.title() : grade.title() + (near.startsWith("near ") ? "; " : "; near ") + near;
    }

    /** What is known of one steel. */
    public static Sheet one(Grade grade) {
        Sheet.Builder sheet = Sheet.titled(grade.name() + ", " + grade.title())
                .add(new Entry.Words("equivalents", "Nearest European", Phrase.of(grade.equivalents())))
                .add(new Entry.Words("words", "Also called", Phrase.of(String.join(", ", Grades.words(grade)))));
        for (Element element : Element.values()) {
            if (grade.composition().of(element) > 0) {
                sheet.add(element.symbol(), element.symbol(), content(grade, element));
            }
        }
        for (Property property : Property.values()) {
            grade.found(property)
                    .ifPresent(e -> sheet.add(property.word(), property.word().replace('-', ' '), e));
        }
        return sheet.build();
    }

    /** Nominal content, between the standard's limits where these are known. */
    private static Estimate content(Grade grade, Element element) {
        double percent = grade.composition().of(element);
        Band limits = Optional.ofNullable(grade.limits().get(element))
                .filter(b -> b.contains(percent))
                .orElse(new Band(Dimension.NUMBER, percent, percent));
        return Estimate.of(
                Dimension.FRACTION,
                PERCENT.toSi(percent),
                PERCENT.toSi(limits.low()),
                PERCENT.toSi(limits.high()),
                grade.compositionBases());
    }
}
