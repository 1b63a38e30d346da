package org.strawblue.core.oxide;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.strawblue.core.table.Row;
import org.strawblue.core.table.Table;

/** The trade's names of the temper colours of plain carbon steel, in the order in which they come. */
public enum ColourName {
    BRIGHT("bright"),
    FAINT_STRAW("faint straw"),
    STRAW("straw"),
    DARK_STRAW("dark straw"),
    YELLOW_BROWN("yellow-brown"),
    RED_BROWN("red-brown"),
    PURPLE("purple"),
    DARK_PURPLE("dark purple"),
    DARK_BLUE("dark blue"),
    BLUE("blue"),
    LIGHT_BLUE("light blue"),
    GREY_BLUE("grey-blue"),
    GREY("grey");

    private static final Map<String, List<String>> ALSO = Table.of(ColourName.class, "name_words.csv").rows().stream()
            .collect(Collectors.toMap(r -> r.text("name"), ColourName::otherWords));

    private final String word;

    ColourName(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }

    /** The colour people call {@code text}, by our word for it or another; upper and lower case do not count. */
    public static Optional<ColourName> find(String text) {
        String sought = text.strip();
        return firstWith(n -> n.word.equalsIgnoreCase(sought))
                .or(() -> firstWith(
                        n -> ALSO.getOrDefault(n.word, List.of()).stream().anyMatch(sought::equalsIgnoreCase)));
    }

    private static Optional<ColourName> firstWith(Function<ColourName, Boolean> test) {
        return Arrays.stream(values()).filter(test::apply).findFirst();
    }

    private static List<String> otherWords(Row row) {
        return List.of(row.text("also").split("\\|"));
    }
}
