package org.strawblue.app.input;

import java.util.Optional;
import java.util.function.Function;
import org.strawblue.app.report.AmountWriter;
import org.strawblue.core.estimate.Answer;
import org.strawblue.core.estimate.Finding;

/** Looks up what a word of the file names; a word that names nothing, or several things, is a problem with the answer's own reason. */
final class Named {

    private Named() {}

    static <T> Optional<T> find(YamlNode.Scalar scalar, Function<String, Answer<T>> find, String expected, Desk desk) {
        Answer<T> answer = find.apply(scalar.text().strip());
        if (answer.value().isPresent()) {
            desk.findings(answer.findings());
            return answer.value();
        }
        AmountWriter writer = new AmountWriter(desk.units());
        Optional<Finding> reason = answer.findings().stream().findFirst();
        desk.problem(
                scalar.place(),
                scalar.text(),
                reason.map(f -> expected + ". " + writer.write(f.what()) + " " + writer.write(f.why()))
                        .orElse(expected),
                reason.map(f -> writer.write(f.remedy())).orElse("Use a word that is known, or write: don't know."));
        return Optional.empty();
    }
}
