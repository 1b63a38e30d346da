package org.strawblue.core.evidence.diagnosis;

import java.util.List;
import java.util.Optional;
import org.strawblue.core.table.Vocabulary;

/**
 * Something that can be seen or tried.
 *
 * @param question as it is asked
 * @param how to see or try it
 * @param answers in order
 * @param effort against a look that costs a minute [1]
 * @param needs what must have been seen before: blank, a clue, or clue=answer
 * @param hazards keys of the cautions that belong to trying it
 */
public record Clue(
        String key,
        String question,
        String how,
        List<Reply> answers,
        double effort,
        String needs,
        List<String> hazards) {

    /**
     * One of its answers.
     *
     * @param words every way people say it
     */
    public record Reply(String key, List<String> words) {
        public Reply {
            words = List.copyOf(words);
        }
    }

    public Clue {
        answers = List.copyOf(answers);
        hazards = List.copyOf(hazards);
    }

    /** The answer that people put so; absent where it is none. */
    public Optional<Reply> answer(String word) {
        Vocabulary<Reply> vocabulary = new Vocabulary<>();
        answers.forEach(a -> {
            vocabulary.add(a.key(), a);
            a.words().forEach(w -> vocabulary.add(w, a));
        });
        return vocabulary.meanings(word).stream().findFirst();
    }
}
