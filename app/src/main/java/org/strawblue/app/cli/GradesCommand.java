package org.strawblue.app.cli;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.strawblue.app.report.Screen;
import org.strawblue.app.service.GradeService;
import org.strawblue.app.service.Sheet;
import org.strawblue.core.steel.Grade;
import org.strawblue.core.steel.Grades;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** The catalogue of steels. */
@Command(
        name = "grades",
        mixinStandardHelpOptions = true,
        addMethodSubcommands = false,
        description = "The steels known here; or all that is known of one of them.",
        footer = {
            "",
            "Examples:",
            "  strawblue grades",
            "  strawblue grades O1",
            "  strawblue grades \"silver steel\" --json"
        })
final class GradesCommand extends Answering {

    @Parameters(arity = "0..1", paramLabel = "NAME", description = "A steel, by any name of the trade.")
    private @Nullable String name;

    GradesCommand(Screen screen) {
        super(screen);
    }

    @Override
    Optional<Sheet> ask(Question question) {
        if (name == null) {
            return Optional.of(GradeService.all());
        }
        Optional<Grade> grade = question.named("NAME", name, Grades::find);
        if (grade.isEmpty() && question.problems().isEmpty()) {
            question.missing("NAME", name, "a steel");
        }
        return question.answer(() -> GradeService.one(grade.orElseThrow()));
    }
}
