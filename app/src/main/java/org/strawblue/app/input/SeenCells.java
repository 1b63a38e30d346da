package org.strawblue.app.input;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.Function;
import org.strawblue.core.job.UnitSystem;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Quantity;
import org.strawblue.core.spring.Hand;
import org.strawblue.core.spring.PushReading;
import org.strawblue.core.spring.Seen;

/**
 * What a row says of a spring beyond its sizes: magnet, colour, rust, hand, push test.
 *
 * @param text of a column; absent where blank or not known
 * @param si of a column
 * @param unread told the column and what was expected where a cell is not understood
 */
record SeenCells(
        Function<String, Optional<String>> text,
        Function<String, Optional<Double>> si,
        BiConsumer<String, String> unread,
        UnitSystem units) {

    private static final String PUSH = "a force at each length, such as 400 gf at 25 mm; 900 gf at 20 mm";

    /** Absent where a cell is not understood. */
    Optional<Seen> seen() {
        Map<String, String> clues = new LinkedHashMap<>();
        boolean read = clue("magnet", "magnet", clues) & clue("colour", "look", clues) & clue("rust", "yes-no", clues);
        Optional<String> hand = text.apply("wound");
        Optional<Hand> wound =
                hand.flatMap(Lexicon.of("hand")::find).map(h -> h.equals("left") ? Hand.LEFT : Hand.RIGHT);
        if (hand.isPresent() && wound.isEmpty()) {
            unread.accept("wound", "left or right");
            read = false;
        }
        Optional<List<PushReading>> pushes = pushes();
        return read && pushes.isPresent()
                ? Optional.of(Seen.of(clues, pushes.get(), wound, si.apply("length before")))
                : Optional.empty();
    }

    private boolean clue(String column, String family, Map<String, String> clues) {
        Optional<String> said = text.apply(column);
        Optional<String> word = said.flatMap(Lexicon.of(family)::find);
        word.ifPresent(w -> clues.put(column, w));
        if (said.isPresent() && word.isEmpty()) {
            unread.accept(
                    column, "one of " + String.join(", ", Lexicon.of(family).words()));
        }
        return said.isEmpty() || word.isPresent();
    }

    private Optional<List<PushReading>> pushes() {
        List<PushReading> readings = new ArrayList<>();
        Optional<String> said = text.apply("push");
        if (said.isEmpty()) {
            return Optional.of(readings);
        }
        for (String one : said.get().split("[;/]")) {
            Optional<PushReading> reading = push(one);
            if (reading.isEmpty()) {
                unread.accept("push", PUSH);
                return Optional.empty();
            }
            readings.add(reading.get());
        }
        return Optional.of(readings);
    }

    private Optional<PushReading> push(String one) {
        String[] parts = one.split("(?i)\\bat\\b|@");
        if (parts.length != 2) {
            return Optional.empty();
        }
        Optional<Double> force = quantity(parts[0], Dimension.FORCE);
        Optional<Double> length = quantity(parts[1], Dimension.LENGTH);
        return force.isPresent() && length.isPresent()
                ? Optional.of(new PushReading(length.get(), force.get()))
                : Optional.empty();
    }

    private Optional<Double> quantity(String words, Dimension dimension) {
        return QuantityReader.quantity(words.strip(), Expectation.of(dimension, units))
                .found()
                .map(Quantity::si);
    }
}
