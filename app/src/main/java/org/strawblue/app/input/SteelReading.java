package org.strawblue.app.input;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.strawblue.core.job.UnitSystem;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Units;
import org.strawblue.core.source.Basis;
import org.strawblue.core.source.Standing;
import org.strawblue.core.steel.Composition;
import org.strawblue.core.steel.Element;
import org.strawblue.core.steel.Grade;
import org.strawblue.core.steel.Grades;

/** Reads what a part is made of: a name of the trade, or an analysis in mass %. */
final class SteelReading {

    private static final Basis GIVEN = new Basis("analysis of the steel", "job-file", Standing.PUBLISHED);
    private static final String EXPECTED = "an analysis in mass % such as {C: 0.9, Mn: 1.2, Cr: 0.5}";

    private final Section part;
    private final Desk desk;

    SteelReading(Section part) {
        this.part = part;
        this.desk = part.desk();
    }

    Optional<Grade> steel() {
        if (!part.has("steel")) {
            desk.problem(
                    part.place(),
                    "no steel",
                    "steel: its name, or its analysis",
                    "Add it here. If it is not known, write  steel: don't know");
            return Optional.empty();
        }
        return part.value("steel").flatMap(this::choice);
    }

    private Optional<Grade> choice(YamlNode node) {
        if (node instanceof YamlNode.MapNode map) {
            return analysis(map).map(c -> Grade.of(c, GIVEN));
        }
        return part.scalar("steel").flatMap(s -> Named.find(s, Grades::find, "a steel", desk));
    }

    private Optional<Composition> analysis(YamlNode.MapNode map) {
        Map<Element, Double> percent = new EnumMap<>(Element.class);
        boolean whole = true;
        for (YamlNode.Entry entry : map.entries()) {
            whole &= element(entry, percent);
        }
        return whole ? composition(map, percent) : Optional.empty();
    }

    private boolean element(YamlNode.Entry entry, Map<Element, Double> percent) {
        Optional<Element> element = Element.find(entry.key().text());
        Optional<Double> content = content(entry.value());
        if (element.isEmpty()) {
            String known = String.join(
                    ", ",
                    List.of(Element.values()).stream().map(Element::symbol).toList());
            desk.problem(
                    entry.key().place(),
                    entry.key().text(),
                    "one of " + known,
                    "Use the chemical symbol; leave out elements that are not listed.");
            return false;
        }
        if (content.isEmpty()) {
            return false;
        }
        if (percent.putIfAbsent(element.get(), content.get()) != null) {
            desk.problem(entry.key().place(), entry.key().text(), "each element once", "Take one of the two away.");
            return false;
        }
        return true;
    }

    /** [mass %] */
    private Optional<Double> content(YamlNode value) {
        if (!(value instanceof YamlNode.Scalar scalar)) {
            desk.problem(value.place(), value.words(), EXPECTED, "Write one number after each symbol.");
            return Optional.empty();
        }
        var percent = Units.of(Dimension.FRACTION, "%");
        Expectation expected = Expectation.of(Dimension.FRACTION, UnitSystem.METRIC);
        Reading<org.strawblue.core.quantity.Quantity> reading = QuantityReader.quantity(scalar.text(), expected);
        if (reading instanceof Reading.Fault<?> fault) {
            desk.problem(fault.at(scalar.place()));
        }
        if (reading instanceof Reading.NotKnown<?>) {
            desk.unknown(part.path("steel"), "analysis");
        }
        return reading.found().map(q -> percent.fromSi(q.si()));
    }

    private Optional<Composition> composition(YamlNode.MapNode map, Map<Element, Double> percent) {
        double sum = percent.values().stream().mapToDouble(Double::doubleValue).sum();
        if (percent.isEmpty() || !percent.containsKey(Element.C) || sum > 50) {
            String read = percent.isEmpty() ? "nothing" : Numbers.show(sum) + " % in all";
            desk.problem(
                    map.place(), read, EXPECTED, "Carbon (C) must be among them, and iron must be the most of it.");
            return Optional.empty();
        }
        return Optional.of(Composition.of(percent));
    }
}
