package org.strawblue.app.input;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.strawblue.core.quantity.Band;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Quantity;

/**
 * One group of keys of a job file, as it is being read. Keys that do not belong, stand twice or are missing are put
 * down as problems at once; a value is checked when it is asked for, and is absent where it is missing, faulty or not
 * known.
 */
final class Section {

    private final String name;
    private final String path;
    private final YamlNode node;
    private final Desk desk;
    private final Map<String, YamlNode.Entry> entries = new LinkedHashMap<>();

    /**
     * @param name of the section in {@code fields.csv}
     * @param path in the words of the file, empty for the whole
     */
    Section(String name, String path, YamlNode node, Desk desk) {
        this.name = name;
        this.path = path;
        this.node = node;
        this.desk = desk;
        if (node instanceof YamlNode.MapNode map) {
            sort(map);
            missing();
        } else {
            desk.problem(
                    node.place(),
                    node.words(),
                    "the keys " + keys(),
                    "Write each on a line of its own, as  key: value.");
        }
    }

    private void sort(YamlNode.MapNode map) {
        Lexicon known = Field.lexicon(name);
        for (YamlNode.Entry entry : map.entries()) {
            Optional<String> key = known.find(entry.key().text());
            if (key.isEmpty()) {
                unknownKey(entry.key(), known);
            } else if (entries.putIfAbsent(key.get(), entry) != null) {
                desk.problem(
                        entry.key().place(),
                        entry.key().text(),
                        "each key once",
                        "“" + key.get() + "” stands here already: take one of the two away.");
            }
        }
    }

    private void unknownKey(YamlNode.Scalar key, Lexicon known) {
        desk.problem(new Problem(
                key.place(),
                key.text(),
                "one of " + keys(),
                known.nearest(key.text()),
                "Correct the word, or put # before the line if it is a remark."));
    }

    private void missing() {
        for (Field field : Field.of(name)) {
            if (field.required() && !entries.containsKey(field.key())) {
                desk.problem(
                        node.place(),
                        "no " + field.key(),
                        field.key() + ": " + field.description(),
                        "Add it here. If it is not known, write  " + field.key() + ": don't know");
            }
        }
    }

    private String keys() {
        return Field.of(name).stream().map(Field::key).collect(Collectors.joining(", "));
    }

    /** Whether there is anything to read: what stands here is a group of keys. */
    boolean isGroup() {
        return node instanceof YamlNode.MapNode;
    }

    boolean has(String key) {
        return entries.containsKey(key);
    }

    Place place() {
        return node.place();
    }

    /** Where the value of this key stands, or the whole group if there is none. */
    Place place(String key) {
        YamlNode.Entry entry = entries.get(key);
        return entry == null ? node.place() : entry.value().place();
    }

    Place keyPlace(String key) {
        YamlNode.Entry entry = entries.get(key);
        return entry == null ? node.place() : entry.key().place();
    }

    Desk desk() {
        return desk;
    }

    String path(String key) {
        return path.isEmpty() ? key : path + " / " + key;
    }

    String path() {
        return path;
    }

    /** The text as it stands. */
    Optional<String> text(String key) {
        return scalar(key).map(YamlNode.Scalar::text).map(String::strip);
    }

    Optional<Quantity> quantity(String key) {
        return read(key, QuantityReader::quantity);
    }

    /** The value in the core's unit. */
    Optional<Double> si(String key) {
        return quantity(key).map(Quantity::si);
    }

    Optional<Band> band(String key) {
        return read(key, QuantityReader::band);
    }

    Optional<Size> size(String key) {
        return read(key, QuantityReader::size);
    }

    /** A size that is part of the text of this key. */
    Optional<Size> size(String key, String text) {
        return settle(QuantityReader.size(text, Expectation.of(Dimension.LENGTH, desk.units())), place(key));
    }

    private interface Reader<T> {
        Reading<T> read(String text, Expectation expected);
    }

    private <T> Optional<T> read(String key, Reader<T> reader) {
        Expectation expected = Field.of(name, key).expectation(desk.units());
        return scalar(key).flatMap(s -> settle(reader.read(s.text(), expected), s.place()));
    }

    /** A list of values of one kind, in the core's unit. */
    List<Double> values(String key) {
        Expectation expected = Field.of(name, key).expectation(desk.units());
        List<Double> values = new ArrayList<>();
        for (YamlNode item : items(key)) {
            if (item instanceof YamlNode.Scalar s) {
                settle(QuantityReader.quantity(s.text(), expected), s.place()).ifPresent(q -> values.add(q.si()));
            } else {
                desk.problem(item.place(), item.words(), expected.phrase(), "Write one value for each, after a dash.");
            }
        }
        return values;
    }

    private <T> Optional<T> settle(Reading<T> reading, Place place) {
        if (reading instanceof Reading.Fault<T> fault) {
            desk.problem(fault.at(place));
        }
        return reading.found();
    }

    /** One of the words of the key's family, in our own spelling. */
    Optional<String> word(String key) {
        String family = Field.of(name, key).family().orElseThrow();
        return scalar(key).flatMap(s -> word(s, Lexicon.of(family)));
    }

    Optional<String> word(YamlNode.Scalar scalar, Lexicon lexicon) {
        return convert(scalar, lexicon::find, String.join(", ", lexicon.words()), lexicon::nearest);
    }

    /** A value that someone else understands. */
    <T> Optional<T> convert(
            YamlNode.Scalar scalar,
            Function<String, Optional<T>> find,
            String expected,
            Function<String, Optional<String>> nearest) {
        Optional<T> found = find.apply(scalar.text().strip());
        if (found.isEmpty()) {
            desk.problem(new Problem(
                    scalar.place(),
                    scalar.text(),
                    "one of " + expected,
                    nearest.apply(scalar.text()),
                    "Use one of these words, or write: don't know."));
        }
        return found;
    }

    /** The value of this key where it is a single text that says something. */
    Optional<YamlNode.Scalar> scalar(String key) {
        Optional<YamlNode> value = value(key);
        if (value.isPresent() && !(value.get() instanceof YamlNode.Scalar)) {
            desk.problem(
                    value.get().place(),
                    value.get().words(),
                    "a single value: " + Field.of(name, key).description(),
                    "Write it on the same line, after the colon.");
            return Optional.empty();
        }
        return value.map(YamlNode.Scalar.class::cast);
    }

    /** The value of this key, unless it is blank or not known. */
    Optional<YamlNode> value(String key) {
        YamlNode.Entry entry = entries.get(key);
        if (entry == null) {
            return Optional.empty();
        }
        if (entry.value() instanceof YamlNode.Scalar scalar) {
            if (scalar.text().isBlank() || scalar.text().equals("~")) {
                desk.problem(
                        entry.key().place(),
                        "nothing after " + entry.key().text(),
                        Field.of(name, key).description(),
                        "Write it, or write: don't know.");
                return Optional.empty();
            }
            if (QuantityReader.notKnown(scalar.text())) {
                desk.unknown(path(key), key);
                return Optional.empty();
            }
        }
        return Optional.of(entry.value());
    }

    /** Whether the file says of this key that it is not known. */
    boolean scalarNotKnown(String key) {
        YamlNode.Entry entry = entries.get(key);
        return entry != null
                && entry.value() instanceof YamlNode.Scalar scalar
                && QuantityReader.notKnown(scalar.text());
    }

    Optional<Section> group(String key) {
        String family = Field.of(name, key).family().orElseThrow();
        return value(key).map(v -> new Section(family, path(key), v, desk)).filter(Section::isGroup);
    }

    /** A list of groups; a single group counts as a list of one. */
    List<Section> groups(String key) {
        String family = Field.of(name, key).family().orElseThrow();
        List<Section> groups = new ArrayList<>();
        for (YamlNode item : items(key)) {
            String called = title(item).orElse(Integer.toString(groups.size() + 1));
            Section group = new Section(family, path(key) + " / " + called, item, desk);
            if (group.isGroup()) {
                groups.add(group);
            }
        }
        return groups;
    }

    /** The items of a list; a single thing counts as a list of one. */
    List<YamlNode> items(String key) {
        Optional<YamlNode> value = value(key);
        if (value.isPresent() && value.get() instanceof YamlNode.ListNode list) {
            return list.items();
        }
        return value.map(List::of).orElse(List.of());
    }

    private static Optional<String> title(YamlNode item) {
        if (!(item instanceof YamlNode.MapNode map)) {
            return Optional.empty();
        }
        return map.entries().stream()
                .filter(e -> e.key().text().strip().equalsIgnoreCase("name"))
                .map(YamlNode.Entry::value)
                .filter(YamlNode.Scalar.class::isInstance)
                .map(v -> ((YamlNode.Scalar) v).text())
                .findFirst();
    }
}
