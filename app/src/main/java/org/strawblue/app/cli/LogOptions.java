package org.strawblue.app.cli;

import java.nio.file.Path;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.strawblue.app.input.OvenLogReader;
import org.strawblue.app.input.Read;
import org.strawblue.core.estimate.Answer;
import org.strawblue.core.estimate.Finding;
import org.strawblue.core.history.Trace;
import org.strawblue.core.quantity.Phrase;
import picocli.CommandLine.Option;

/** A measured history as what heats a part. */
final class LogOptions {

    @Option(
            names = "--log",
            paramLabel = "FILE.csv",
            description = "A measured history: a column of times and one of temperatures, any sampling, °C or °F.")
    private @Nullable Path file;

    @Option(
            names = "--log-of",
            paramLabel = "part|oven|plate",
            description = "What was measured: the part itself (if not told), the oven about it, the plate under it.")
    private @Nullable What of;

    enum What {
        PART,
        OVEN,
        PLATE
    }

    boolean given() {
        return file != null;
    }

    What of() {
        return of == null ? What.PART : of;
    }

    /** The history, or the reason why there is none among the question's problems and findings. */
    Optional<Answer<Trace>> trace(Question question) {
        if (file == null) {
            if (of != null) {
                question.missing("--log", null, "the file with the measured history");
            }
            return Optional.empty();
        }
        Read<Answer<Trace>> read = OvenLogReader.measured(file, question.units());
        read.problems().forEach(question::problem);
        read.notes().forEach(n -> question.note(note(n)));
        return read.value();
    }

    private static Finding note(String text) {
        return new Finding.Note(Phrase.of(text.replace("{}", "{ }")), Phrase.of(""), Phrase.of(""));
    }
}
