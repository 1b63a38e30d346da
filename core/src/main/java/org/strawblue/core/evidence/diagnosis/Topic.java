package org.strawblue.core.evidence.diagnosis;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.strawblue.core.source.Basis;
import org.strawblue.core.source.Standing;
import org.strawblue.core.table.Row;
import org.strawblue.core.table.Table;
import org.strawblue.core.table.Vocabulary;

/**
 * What is asked after, with all that may be behind it and all that can be seen of it, from {@code topics.csv}, {@code causes.csv},
 * {@code clues.csv} and {@code chances.csv}.
 *
 * @param chances by clue, then by cause, the chance of each answer [1]
 */
public record Topic(
        String key,
        String title,
        List<Cause> causes,
        List<Clue> clues,
        Map<String, Map<String, List<Double>>> chances) {

    /** The topic of {@link UnknownSteel}. */
    static final String STEEL = "unknown-steel";

    private static final List<String> NUMBERS = List.of("first", "second", "third", "fourth", "fifth");

    public Topic {
        causes = List.copyOf(causes);
        clues = List.copyOf(clues);
        chances = Map.copyOf(chances);
    }

    /** The symptoms, {@link UnknownSteel}'s question not among them. */
    public static List<Topic> symptoms() {
        return Read.ALL.values().stream().filter(t -> !t.key.equals(STEEL)).toList();
    }

    /** The symptom that people put so. */
    public static Optional<Topic> find(String word) {
        return Read.WORDS.meanings(word).stream()
                .filter(t -> !t.key.equals(STEEL))
                .findFirst();
    }

    /** Ways to put a symptom that are most like this one. */
    public static List<String> nearest(String word) {
        return Read.WORDS.nearest(word, 1);
    }

    static Topic of(String key) {
        Topic topic = Read.ALL.get(key);
        if (topic == null) {
            throw new IllegalArgumentException("no topic " + key);
        }
        return topic;
    }

    public Optional<Clue> clue(String clueKey) {
        Vocabulary<Clue> vocabulary = new Vocabulary<>();
        clues.forEach(c -> vocabulary.add(c.key(), c));
        return vocabulary.meanings(clueKey).stream().findFirst();
    }

    /** P(answer | cause) for every answer of a clue, then every cause. */
    double[][] table(Clue clue) {
        double[][] table = new double[clue.answers().size()][causes.size()];
        Map<String, List<Double>> byCause = chances.getOrDefault(clue.key(), Map.of());
        for (int c = 0; c < causes.size(); c++) {
            List<Double> row = byCause.getOrDefault(causes.get(c).key(), List.of());
            for (int a = 0; a < table.length; a++) {
                table[a][c] = row.get(a);
            }
        }
        return table;
    }

    /** Read when first asked for. */
    private static final class Read {

        private static final Map<String, Topic> ALL = new LinkedHashMap<>();
        private static final Vocabulary<Topic> WORDS = new Vocabulary<>();

        static {
            List<Row> causes = Table.of(Topic.class, "causes.csv").rows();
            List<Row> clues = Table.of(Topic.class, "clues.csv").rows();
            List<Row> chances = Table.of(Topic.class, "chances.csv").rows();
            for (Row row : Table.of(Topic.class, "topics.csv").rows()) {
                String key = row.text("key");
                Topic topic = new Topic(
                        key,
                        row.text("title"),
                        of(key, causes).map(Read::cause).toList(),
                        of(key, clues).map(Read::clue).toList(),
                        chances(of(key, chances).toList()));
                ALL.put(key, topic);
                WORDS.add(key, topic);
                list(row, "words").forEach(w -> WORDS.add(w, topic));
            }
        }

        private static Stream<Row> of(String topic, List<Row> rows) {
            return rows.stream().filter(r -> r.text("topic").equals(topic));
        }

        private static Cause cause(Row row) {
            return new Cause(
                    row.text("key"),
                    row.number("weight"),
                    row.optionalText("check").orElse(""),
                    row.text("title"),
                    row.optionalText("remedy").orElse(""),
                    list(row, "hazards"),
                    new Basis("how often each cause is met", row.text("source"), Standing.of(row.text("standing"))));
        }

        private static Clue clue(Row row) {
            List<Clue.Reply> answers = Arrays.stream(row.text("answers").split(";"))
                    .map(a -> a.split("=", 2))
                    .map(a -> new Clue.Reply(a[0], List.of(a[1].split("\\|"))))
                    .toList();
            return new Clue(
                    row.text("key"),
                    row.text("question"),
                    row.text("how"),
                    answers,
                    row.number("effort"),
                    row.optionalText("needs").orElse(""),
                    list(row, "hazards"));
        }

        private static Map<String, Map<String, List<Double>>> chances(List<Row> rows) {
            Map<String, Map<String, List<Double>>> all = new LinkedHashMap<>();
            for (Row row : rows) {
                List<Double> numbers = new ArrayList<>();
                NUMBERS.forEach(n -> row.optionalNumber(n).ifPresent(numbers::add));
                all.computeIfAbsent(row.text("clue"), k -> new LinkedHashMap<>())
                        .put(row.text("cause"), List.copyOf(numbers));
            }
            return all;
        }

        private static List<String> list(Row row, String column) {
            return row.optionalText(column).map(t -> List.of(t.split("\\|"))).orElse(List.of());
        }
    }
}
