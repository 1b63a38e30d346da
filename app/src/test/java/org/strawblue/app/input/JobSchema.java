package org.strawblue.app.input;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.StringWriter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.strawblue.core.colour.Light;
import org.strawblue.core.heat.HeatSource;
import org.strawblue.core.heat.HeatSources;
import org.strawblue.core.steel.Duties;
import org.strawblue.core.steel.Duty;
import org.strawblue.core.steel.Element;
import org.strawblue.core.steel.Grade;
import org.strawblue.core.steel.Grades;
import org.strawblue.core.steel.Quenchant;
import org.strawblue.core.steel.Quenchants;

/** Makes the JSON Schema of a job file from the list of its keys, so that the two cannot drift apart. */
final class JobSchema {

    private static final String NOT_KNOWN = "don't know";

    private JobSchema() {}

    static Map<String, Object> schema() {
        Map<String, Object> schema = new LinkedHashMap<>();
        schema.put("$schema", "https://json-schema.org/draft/2020-12/schema");
        schema.put("title", "Strawblue job");
        schema.put(
                "description",
                "A job: the parts to be made and hardened, the places for springs, and what is in the shop. The reader"
                        + " takes more than this schema shows: keys in any case, with hyphens or underscores for spaces,"
                        + " and the other words the guide lists.");
        schema.putAll(group("job"));
        Map<String, Object> defs = new LinkedHashMap<>();
        sections().filter(s -> !s.equals("job")).forEach(s -> defs.put(s, group(s)));
        schema.put("$defs", defs);
        return schema;
    }

    /** The sections of a job file; a row of the drawer is none of them. */
    static Stream<String> sections() {
        return Field.all().stream()
                .map(Field::section)
                .filter(s -> !s.equals("spring"))
                .distinct();
    }

    private static Map<String, Object> group(String section) {
        Map<String, Object> group = new LinkedHashMap<>();
        Map<String, Object> properties = new LinkedHashMap<>();
        Field.of(section).forEach(f -> properties.put(f.key(), value(f)));
        group.put("type", "object");
        group.put("properties", properties);
        List<String> required = Field.of(section).stream()
                .filter(Field::required)
                .map(Field::key)
                .toList();
        if (!required.isEmpty()) {
            group.put("required", required);
        }
        group.put("additionalProperties", false);
        return group;
    }

    private static Map<String, Object> value(Field field) {
        Map<String, Object> value = new LinkedHashMap<>();
        value.put("description", field.description());
        switch (field.kind()) {
            case "group" -> value.put("anyOf", List.of(ref(field), unknown()));
            case "groups" -> value.put("anyOf", List.of(array(ref(field)), ref(field), unknown()));
            case "things" ->
                value.put(
                        "anyOf",
                        List.of(
                                array(Map.of("anyOf", List.of(text(kinds(field)), ref(field)))),
                                ref(field),
                                text(kinds(field))));
            case "list" -> value.put("anyOf", List.of(array(text(words(field))), text(words(field))));
            case "word" -> value.put("anyOf", text(words(field)).get("anyOf"));
            case "text" -> text(words(field)).forEach(value::put);
            default -> value.put("type", List.of("string", "number"));
        }
        if (field.key().equals("steel")) {
            value.put("anyOf", List.of(text(words(field)), analysis()));
        }
        return value;
    }

    private static Map<String, Object> unknown() {
        return Map.of("const", NOT_KNOWN);
    }

    private static Map<String, Object> ref(Field field) {
        return Map.of("$ref", "#/$defs/" + field.family().orElseThrow());
    }

    private static Map<String, Object> array(Map<String, Object> items) {
        Map<String, Object> array = new LinkedHashMap<>();
        array.put("type", "array");
        array.put("items", items);
        return array;
    }

    /** Any text or number; the words are offered, not imposed: the reader knows more of them. */
    private static Map<String, Object> text(Set<String> words) {
        Map<String, Object> any = Map.of("type", List.of("string", "number"));
        return words.isEmpty() ? any : Map.of("anyOf", List.of(Map.of("enum", List.copyOf(words)), any));
    }

    private static Map<String, Object> analysis() {
        Map<String, Object> properties = new LinkedHashMap<>();
        for (Element element : Element.values()) {
            properties.put(element.symbol(), Map.of("type", List.of("number", "string")));
        }
        Map<String, Object> analysis = new LinkedHashMap<>();
        analysis.put("type", "object");
        analysis.put("properties", properties);
        analysis.put("required", List.of("C"));
        analysis.put("additionalProperties", false);
        return analysis;
    }

    /** The words of the things of a list, which stand under "kind" where a thing is a group. */
    private static Set<String> kinds(Field field) {
        return words(Field.of(field.family().orElseThrow(), "kind"));
    }

    private static Set<String> words(Field field) {
        Set<String> words = new LinkedHashSet<>(
                switch (field.section() + " " + field.key()) {
                    case "job light" ->
                        Stream.of(Light.values()).map(Light::word).toList();
                    case "part steel" -> Grades.all().stream().map(Grade::name).toList();
                    case "part duty" -> Duties.all().stream().map(Duty::key).toList();
                    case "harden with", "temper with", "heat kind" ->
                        HeatSources.all().stream().map(HeatSource::name).toList();
                    case "harden quench", "shop quenchants" ->
                        Quenchants.all().stream().map(Quenchant::name).toList();
                    default -> own(field);
                });
        if (!words.isEmpty()) {
            words.add(NOT_KNOWN);
        }
        return words;
    }

    private static List<String> own(Field field) {
        return field.kind().equals("word")
                ? new ArrayList<>(Lexicon.of(field.family().orElseThrow()).words())
                : List.of();
    }

    /** Indented JSON, ending in a line break. */
    static String json() throws IOException {
        StringWriter out = new StringWriter();
        try (JsonGenerator json = new JsonFactory().createGenerator(out).useDefaultPrettyPrinter()) {
            write(json, schema());
        }
        return out.toString().replace("\r\n", "\n") + "\n";
    }

    private static void write(JsonGenerator json, Object value) throws IOException {
        if (value instanceof Map<?, ?> map) {
            json.writeStartObject();
            for (var entry : map.entrySet()) {
                json.writeFieldName((String) entry.getKey());
                write(json, entry.getValue());
            }
            json.writeEndObject();
        } else if (value instanceof List<?> list) {
            json.writeStartArray();
            for (Object item : list) {
                write(json, item);
            }
            json.writeEndArray();
        } else if (value instanceof Boolean flag) {
            json.writeBoolean(flag);
        } else {
            json.writeString(value.toString());
        }
    }
}
