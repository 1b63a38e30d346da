package org.strawblue.app.cli;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.strawblue.app.input.QuantityReader;
import org.strawblue.app.report.Screen;
import org.strawblue.app.service.DiagnoseService;
import org.strawblue.app.service.Sheet;
import org.strawblue.core.evidence.diagnosis.Clue;
import org.strawblue.core.evidence.diagnosis.Known;
import org.strawblue.core.evidence.diagnosis.Topic;
import org.strawblue.core.evidence.diagnosis.UnknownSteel;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Why a part came out as it did; what an unknown steel may be. */
@Command(
        name = "diagnose",
        mixinStandardHelpOptions = true,
        addMethodSubcommands = false,
        description = {
            "Why it did not harden, cracked, chips, rolls over, is bent, or shows another colour than it should: the causes with"
                    + " their chances, from what is known of the job and what was seen, and the smallest step that puts it right"
                    + " or tells them apart. Or, with --unknown-steel, what family a steel of no name belongs to. Leave out, or"
                    + " answer with  don't know , whatever you do not know; the answer names what to look at next."
        },
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {"0:answered", "1:refused, with the reason", "2:bad input: every fault is listed"},
        footer = {
            "",
            "Examples:",
            "  strawblue diagnose --symptom \"did not harden\" --grade O1 --hardened-from 720C",
            "  strawblue diagnose --symptom cracked --quench water --seen when=bath",
            "  strawblue diagnose --symptom chips --grade O1 --tempered-at 170C \\",
            "      --tempered-for 1h --wanted 58-60",
            "  strawblue diagnose examples/index-plunger.yaml --part \"plunger pin\" \\",
            "      --symptom \"did not harden\" --seen magnet=held",
            "  strawblue diagnose --unknown-steel",
            "      what to try first",
            "  strawblue diagnose --unknown-steel --look black --oil soft --water hard"
        })
final class DiagnoseCommand extends Answering {

    @Option(
            names = "--symptom",
            paramLabel = "WORDS",
            description = "did not harden, cracked, chips, rolls over, bent, colour does not match.")
    private @Nullable String symptom;

    @Option(
            names = "--seen",
            paramLabel = "CLUE=ANSWER",
            description = "Something seen or tried; the answer to a first question names what tells most.")
    private @Nullable List<String> seen;

    @Mixin
    private KnownOptions told;

    @Option(names = "--unknown-steel", description = "What family does a steel of no name belong to?")
    private boolean unknownSteel;

    @Mixin
    private CouponOptions coupon;

    DiagnoseCommand(Screen screen) {
        super(screen);
    }

    @Override
    Optional<Sheet> ask(Question question) {
        return unknownSteel ? askSteel(question) : askSymptom(question);
    }

    private Optional<Sheet> askSteel(Question question) {
        if (symptom != null) {
            question.problem("--symptom", symptom, "--symptom or --unknown-steel, not both", "Leave one out.");
        }
        Map<String, String> answers = seen(question, UnknownSteel.topic());
        coupon.tried()
                .forEach((clue, word) -> answer(question, UnknownSteel.topic(), "--" + clue, clue, word, answers));
        return question.answer(() -> DiagnoseService.steel(answers));
    }

    private Optional<Sheet> askSymptom(Question question) {
        coupon.tried()
                .forEach((clue, word) -> question.problem(
                        "--" + clue,
                        word,
                        "--unknown-steel with it",
                        "Add --unknown-steel, or write --seen for a symptom."));
        Optional<Topic> topic = symptom(question);
        Known known = told.known(question);
        Map<String, String> answers = topic.map(t -> seen(question, t)).orElse(Map.of());
        return question.answer(() -> DiagnoseService.symptom(topic.orElseThrow(), known, answers));
    }

    private Optional<Topic> symptom(Question question) {
        String words =
                String.join(", ", "did not harden", "cracked", "chips", "rolls over", "bent", "colour does not match");
        if (symptom == null || QuantityReader.notKnown(symptom)) {
            question.missing("--symptom", symptom, "one of " + words + "; or --unknown-steel");
            return Optional.empty();
        }
        Optional<Topic> found = Topic.find(symptom);
        if (found.isEmpty()) {
            String nearest = Topic.nearest(symptom).stream()
                    .findFirst()
                    .map(n -> "Did you mean " + n + "? ")
                    .orElse("");
            question.problem("--symptom", symptom, "one of " + words, nearest + "Choose one of these.");
        }
        return found;
    }

    private Map<String, String> seen(Question question, Topic topic) {
        Map<String, String> answers = new LinkedHashMap<>();
        for (String one : seen == null ? List.<String>of() : seen) {
            String[] parts = one.split("=", 2);
            if (parts.length < 2) {
                question.problem(
                        "--seen", one, "clue=answer, such as magnet=held", "Clues here: " + clues(topic) + ".");
            } else {
                answer(question, topic, "--seen", parts[0].strip(), parts[1].strip(), answers);
            }
        }
        return answers;
    }

    private static void answer(
            Question question, Topic topic, String option, String key, String word, Map<String, String> answers) {
        Optional<Clue> clue = topic.clue(key);
        if (clue.isEmpty()) {
            question.problem(option, key, "one of " + clues(topic), "Choose one of these clues.");
            return;
        }
        if (QuantityReader.notKnown(word)) {
            return;
        }
        Optional<Clue.Reply> reply = clue.get().answer(word);
        if (reply.isEmpty()) {
            String words = String.join(
                    ", ", clue.get().answers().stream().map(Clue.Reply::key).toList());
            question.problem(option, word, "one of " + words, clue.get().question() + " Or leave it out.");
            return;
        }
        String before = answers.put(clue.get().key(), reply.get().key());
        if (before != null && !before.equals(reply.get().key())) {
            question.problem(
                    option, key + "=" + word, "each clue once", "It was answered with " + before + " as well.");
        }
    }

    private static String clues(Topic topic) {
        return String.join(", ", topic.clues().stream().map(Clue::key).toList());
    }
}
