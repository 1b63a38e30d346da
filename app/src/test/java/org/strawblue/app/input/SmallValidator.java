package org.strawblue.app.input;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Checks a value against the few keywords of JSON Schema that the job schema uses; any other keyword is refused. */
final class SmallValidator {

    private static final List<String> KNOWN = List.of(
            "$schema",
            "$defs",
            "title",
            "description",
            "type",
            "properties",
            "required",
            "additionalProperties",
            "items",
            "anyOf",
            "enum",
            "const",
            "$ref");

    private final Map<String, Object> root;

    private SmallValidator(Map<String, Object> root) {
        this.root = root;
    }

    static List<String> faults(Map<String, Object> schema, Object value) {
        return new SmallValidator(schema).check("", schema, value);
    }

    private List<String> check(String path, Map<String, Object> schema, Object value) {
        List<String> faults = new ArrayList<>();
        schema.keySet().stream().filter(k -> !KNOWN.contains(k)).forEach(k -> faults.add("unknown keyword " + k));
        if (schema.get("$ref") instanceof String ref) {
            faults.addAll(check(path, map(map(root.get("$defs")).get(ref.substring("#/$defs/".length()))), value));
        }
        if (schema.containsKey("type") && !types(schema.get("type")).contains(type(value))) {
            faults.add(path + ": not of type " + schema.get("type"));
        }
        boolean outside = schema.get("enum") instanceof List<?> words && !words.contains(value)
                || schema.containsKey("const") && !schema.get("const").equals(value);
        if (outside) {
            faults.add(path + ": not one of the words");
        }
        if (schema.get("anyOf") instanceof List<?> ways
                && ways.stream().noneMatch(w -> check(path, map(w), value).isEmpty())) {
            faults.add(path + ": fits none of the ways");
        }
        if (value instanceof Map<?, ?> group && schema.containsKey("properties")) {
            faults.addAll(group(path, schema, group));
        }
        if (value instanceof List<?> list && schema.containsKey("items")) {
            list.forEach(item -> faults.addAll(check(path + "[]", map(schema.get("items")), item)));
        }
        return faults;
    }

    private List<String> group(String path, Map<String, Object> schema, Map<?, ?> group) {
        List<String> faults = new ArrayList<>();
        Map<String, Object> properties = map(schema.get("properties"));
        group.forEach((key, value) -> {
            if (properties.containsKey(key)) {
                faults.addAll(check(path + "/" + key, map(properties.get(key)), value));
            } else if (Boolean.FALSE.equals(schema.get("additionalProperties"))) {
                faults.add(path + "/" + key + ": unknown key");
            }
        });
        if (schema.get("required") instanceof List<?> required) {
            required.stream().filter(r -> !group.containsKey(r)).forEach(r -> faults.add(path + ": no " + r));
        }
        return faults;
    }

    private static List<?> types(Object type) {
        return type instanceof List<?> list ? list : List.of(type);
    }

    private static String type(Object value) {
        if (value instanceof Map) {
            return "object";
        }
        if (value instanceof List) {
            return "array";
        }
        return value instanceof Number ? "number" : value instanceof Boolean ? "boolean" : "string";
    }

    @SuppressWarnings("unchecked")
    private static Map<String, Object> map(Object value) {
        return (Map<String, Object>) value;
    }
}
