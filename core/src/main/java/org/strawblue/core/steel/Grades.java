package org.strawblue.core.steel;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.strawblue.core.estimate.Answer;
import org.strawblue.core.estimate.Finding;
import org.strawblue.core.quantity.Phrase;
import org.strawblue.core.table.Row;
import org.strawblue.core.table.Table;
import org.strawblue.core.table.Vocabulary;

/** The catalogue of steels, and the words people use for them in the UK, the US and elsewhere. */
public final class Grades {

    private static final int SUGGESTIONS = 3;

    private static final Map<String, Grade> BY_NAME = GradeTables.load();
    private static final Map<String, List<String>> WORDS = new LinkedHashMap<>();
    private static final Vocabulary<Meaning> VOCABULARY = vocabulary();

    private Grades() {}

    private record Meaning(Grade grade, String reading, Optional<String> note) {}

    /** All grades, in the order of the catalogue. */
    public static List<Grade> all() {
        return List.copyOf(BY_NAME.values());
    }

    /** The grade of this catalogue name: "O1". @throws IllegalArgumentException where there is none */
    public static Grade of(String name) {
        Grade grade = BY_NAME.get(name);
        if (grade == null) {
            throw new IllegalArgumentException("no grade " + name);
        }
        return grade;
    }

    /**
     * The grade people call {@code word}: a standard's name or number, or a word of the trade. A word that several steels go
     * by is not guessed: the answer asks which.
     */
    public static Answer<Grade> find(String word) {
        List<Meaning> meanings = VOCABULARY.meanings(word);
        if (meanings.isEmpty()) {
            return Answer.refused(unknown(word));
        }
        Meaning first = meanings.get(0);
        if (first.reading.equals("ask")) {
            return Answer.refused(which(word, meanings));
        }
        return Answer.of(
                first.grade,
                first.note.map(note -> List.of(taken(word, first.grade, note))).orElse(List.of()));
    }

    /** Every word that leads to this grade, or to a question in which it is an answer. */
    public static List<String> words(Grade grade) {
        return WORDS.getOrDefault(grade.name(), List.of());
    }

    private static Finding taken(String word, Grade grade, String note) {
        return new Finding.Caution(
                Phrase.of("“" + escaped(word) + "” is taken as " + grade.name() + "."),
                Phrase.of(sentence(note)),
                Phrase.of(
                        "If the bar is marked otherwise, name that steel instead; if not, harden a test piece first."));
    }

    private static Finding which(String word, List<Meaning> meanings) {
        String names = meanings.stream().map(m -> m.grade.name()).distinct().collect(Collectors.joining(", "));
        String why = meanings.stream()
                .flatMap(m -> m.note.stream())
                .findFirst()
                .map(Grades::sentence)
                .orElse("Several steels go by this word.");
        return new Finding.Stop(
                Phrase.of("“" + escaped(word) + "” may be " + names + ": which is it?"),
                Phrase.of(why + " They are not hardened alike."),
                Phrase.of("Look at the wrapper, the paint on the bar's end or the seller's list, and name the grade."));
    }

    private static Finding unknown(String word) {
        List<String> near = VOCABULARY.nearest(word, SUGGESTIONS);
        return new Finding.Stop(
                Phrase.of("No steel is known here as “" + escaped(word) + "”."),
                Phrase.of("It is neither a grade of the catalogue nor one of the words for them."),
                Phrase.of(
                        near.isEmpty()
                                ? "Name a grade of the catalogue, or give the steel's composition."
                                : "Did you mean " + String.join(", ", near) + "?"));
    }

    private static String escaped(String word) {
        return word.replace("{}", "{ }");
    }

    private static String sentence(String note) {
        return Character.toUpperCase(note.charAt(0)) + note.substring(1) + ".";
    }

    private static Vocabulary<Meaning> vocabulary() {
        Vocabulary<Meaning> vocabulary = new Vocabulary<>();
        for (Row row : Table.of(Grades.class, "grade-words.csv").rows()) {
            Grade grade = of(row.text("grade"));
            vocabulary.add(row.text("word"), new Meaning(grade, row.text("reading"), row.optionalText("note")));
            WORDS.computeIfAbsent(grade.name(), k -> new java.util.ArrayList<>())
                    .add(row.text("word"));
        }
        return vocabulary;
    }
}
