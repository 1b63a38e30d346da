package org.strawblue.app.cli;

import java.nio.file.Path;
import java.util.List;
import org.strawblue.app.input.Drawer;
import org.strawblue.app.input.DrawerReader;
import org.strawblue.app.input.Read;
import org.strawblue.core.estimate.Finding;
import org.strawblue.core.quantity.Phrase;
import org.strawblue.core.spring.MeasuredSpring;

/** Reads the drawer a command was given. */
final class DrawerOption {

    private DrawerOption() {}

    /** Every spring that was understood; each row that was not is told. */
    static List<MeasuredSpring> springs(Question question, Path drawer) {
        Read<Drawer> read = DrawerReader.read(drawer, question.units());
        question.problems().addAll(read.problems());
        read.notes()
                .forEach(note -> question.note(new Finding.Note(
                        Phrase.of(note.replace("{}", "{ }")),
                        Phrase.of("It stands so in the drawer file."),
                        Phrase.of("Measure what is missing, and ask again."))));
        List<MeasuredSpring> springs = read.value().map(Drawer::springs).orElse(List.of());
        if (springs.isEmpty() && question.problems().isEmpty()) {
            question.missing("--drawer", String.valueOf(drawer), "a drawer with at least one spring");
        }
        return springs;
    }
}
