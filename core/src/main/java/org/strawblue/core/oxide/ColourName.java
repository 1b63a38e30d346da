package org.strawblue.core.oxide;

import java.util.Optional;
import org.strawblue.core.table.Row;
import org.strawblue.core.table.Table;
import org.strawblue.core.table.Vocabulary;

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

    private static final Vocabulary<ColourName> WORDS = words();

    private final String word;

    ColourName(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }

    /** The colour people call {@code text}, by our word for it or another; case, spaces and hyphens do not count. */
    public static Optional<ColourName> find(String text) {
        return WORDS.meanings(text).stream().findFirst();
    }

    /** Every word a colour may be called by. */
    public static Vocabulary<ColourName> vocabulary() {
        return WORDS;
    }

    private static Vocabulary<ColourName> words() {
        Vocabulary<ColourName> words = new Vocabulary<>();
        for (ColourName name : values()) {
            words.add(name.word, name);
        }
        for (Row row : Table.of(ColourName.class, "name_words.csv").rows()) {
            ColourName name = words.meanings(row.text("name")).get(0);
            for (String also : row.text("also").split("\\|")) {
                words.add(also, name);
            }
        }
        return words;
    }
}
