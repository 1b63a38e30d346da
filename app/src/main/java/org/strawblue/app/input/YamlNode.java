package org.strawblue.app.input;

import java.util.List;

/** A YAML document as it stands in the file, every piece with its place. */
sealed interface YamlNode {

    Place place();

    /** @param text the value; an empty plain scalar is a key with nothing after it */
    record Scalar(String text, Place place) implements YamlNode {}

    record ListNode(List<YamlNode> items, Place place) implements YamlNode {
        public ListNode {
            items = List.copyOf(items);
        }
    }

    record MapNode(List<Entry> entries, Place place) implements YamlNode {
        public MapNode {
            entries = List.copyOf(entries);
        }
    }

    record Entry(Scalar key, YamlNode value) {}

    /** What it is, for an error. */
    default String words() {
        if (this instanceof Scalar scalar) {
            return scalar.text();
        }
        return this instanceof ListNode ? "a list" : "a group of keys";
    }
}
