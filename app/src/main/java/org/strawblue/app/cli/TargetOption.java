package org.strawblue.app.cli;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.strawblue.app.service.HeatTarget;
import org.strawblue.core.oxide.ColourName;
import org.strawblue.core.quantity.Dimension;
import picocli.CommandLine.Option;

/** What a part is heated for. */
final class TargetOption {

    @Option(
            names = "--target",
            paramLabel = "WHAT",
            description =
                    "What is wanted: a hardness (58-60 HRC) or a film colour (straw, or straw..purple); tells when to"
                            + " take it off.")
    private @Nullable String target;

    boolean told() {
        return target != null;
    }

    Optional<HeatTarget> target(Question question) {
        if (target == null) {
            return Optional.empty();
        }
        String[] ends = target.split("\\.\\.| to ", 2);
        Optional<ColourName> first = ColourName.find(ends[0].strip());
        Optional<ColourName> last = ColourName.find(ends[ends.length - 1].strip());
        if (first.isPresent() && last.isPresent()) {
            return Optional.of(new HeatTarget.Colours(first.get(), last.get()));
        }
        if (target.chars().noneMatch(Character::isDigit)) {
            question.problem(
                    "--target", target, "a hardness such as 58-60 HRC, or a film colour", "Colours are: " + colours());
            return Optional.empty();
        }
        return question.band("--target", target, Dimension.HARDNESS).map(HeatTarget.Hardness::new);
    }

    private static String colours() {
        StringBuilder words = new StringBuilder();
        for (ColourName name : ColourName.values()) {
            words.append(words.length() == 0 ? "" : ", ").append(name.word());
        }
        return words.append('.').toString();
    }
}
