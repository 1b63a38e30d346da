package org.strawblue.app.service;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.strawblue.core.estimate.Finding;
import org.strawblue.core.evidence.diagnosis.Clue;
import org.strawblue.core.evidence.diagnosis.Diagnosis;
import org.strawblue.core.evidence.diagnosis.Family;
import org.strawblue.core.evidence.diagnosis.Known;
import org.strawblue.core.evidence.diagnosis.NextTest;
import org.strawblue.core.evidence.diagnosis.Ranked;
import org.strawblue.core.evidence.diagnosis.Topic;
import org.strawblue.core.evidence.diagnosis.UnknownSteel;
import org.strawblue.core.job.Hazard;
import org.strawblue.core.job.Hazards;
import org.strawblue.core.quantity.Amount;
import org.strawblue.core.quantity.Phrase;
import org.strawblue.core.quantity.Quantity;

/** Why a part came out as it did, and what an unknown steel may be. */
public final class DiagnoseService {

    /** So many causes are told in full; the others hardly matter. */
    private static final int CAUSES = 4;

    private static final int TESTS = 3;

    private DiagnoseService() {}

    /** @param seen answers by clue */
    public static Sheet symptom(Topic symptom, Known known, Map<String, String> seen) {
        Diagnosis diagnosis = Diagnosis.of(symptom, known, seen);
        Sheet.Builder sheet = Sheet.titled("Why " + symptom.title());
        Ranked first = diagnosis.causes().get(0);
        Set<String> hazards = new LinkedHashSet<>();
        if (diagnosis.sure() || diagnosis.tests().isEmpty()) {
            sheet.add(
                    new Entry.Words("remedy", "Do this", Phrase.of(first.cause().remedy())));
            hazards.addAll(first.cause().hazards());
        } else {
            NextTest test = diagnosis.tests().get(0);
            sheet.add(new Entry.Words("first", "First", Phrase.of(test.clue().how())));
            sheet.add(new Entry.Words(
                    "remedy",
                    "Then, if it is the first",
                    Phrase.of(first.cause().remedy())));
            hazards.addAll(test.clue().hazards());
            hazards.addAll(first.cause().hazards());
        }
        causes(sheet, diagnosis.causes());
        tests(sheet, diagnosis.tests(), "--seen ");
        return finished(sheet, diagnosis.findings(), hazards);
    }

    private static void causes(Sheet.Builder sheet, List<Ranked> causes) {
        int place = 0;
        for (Ranked ranked : causes.subList(0, Math.min(CAUSES, causes.size()))) {
            place++;
            sheet.add("cause_" + place, place + ". " + ranked.words(), ranked.chance());
            sheet.add(new Entry.Words("cause_" + place + "_what", "", told(ranked)));
        }
    }

    private static Phrase told(Ranked ranked) {
        String title = ranked.cause().title();
        return ranked.because()
                .map(b -> new Phrase(title + " (" + b.template() + ")", b.amounts()))
                .orElse(Phrase.of(title));
    }

    private static void tests(Sheet.Builder sheet, List<NextTest> tests, String option) {
        int place = 0;
        for (NextTest test : tests.subList(0, Math.min(TESTS, tests.size()))) {
            place++;
            Clue clue = test.clue();
            List<String> answers = clue.answers().stream().map(Clue.Reply::key).toList();
            Amount bits = Quantity.number(Math.round(test.bits() * 100) / 100.0);
            sheet.add(new Entry.Words(
                    "test_" + place,
                    place == 1 ? "What tells them apart" : "",
                    Phrase.of(
                            clue.question() + " (" + option + clue.key() + (option.endsWith(" ") ? "=" : " ")
                                    + String.join("|", answers) + "; {} bit)",
                            bits)));
        }
    }

    /** @param seen answers by clue */
    public static Sheet steel(Map<String, String> seen) {
        UnknownSteel steel = UnknownSteel.of(seen);
        Sheet.Builder sheet = Sheet.titled("What steel it is");
        Set<String> hazards = new LinkedHashSet<>();
        steel.advice().ifPresent(family -> {
            advice(sheet, family);
            hazards.addAll(family.hazards());
        });
        if (steel.advice().isEmpty() && !steel.tests().isEmpty()) {
            Clue next = steel.tests().get(0).clue();
            sheet.add(new Entry.Words("next", "Next", Phrase.of(next.how())));
            hazards.addAll(next.hazards());
        }
        causes(sheet, steel.families());
        tests(sheet, steel.tests(), "--");
        return finished(sheet, steel.findings(), hazards);
    }

    private static void advice(Sheet.Builder sheet, Family family) {
        sheet.add(new Entry.Words("advice", "Treat it so", Phrase.of(family.advice())));
        if (family.window().isPresent()) {
            sheet.add(new Entry.Limits(
                    "harden_from", "Harden from", family.window().get()));
        } else {
            // one grade's heat ruins another: told apart, not averaged
            family.windows()
                    .forEach((grade, window) -> sheet.add(new Entry.Limits(
                            "harden_from_" + grade.name(), "Harden from, if it is " + grade.name(), window)));
        }
        if (family.hardens()) {
            String like = String.join(
                    ", ", family.grades().stream().map(g -> g.name()).toList());
            sheet.add(new Entry.Words("quench", "Quench in", Phrase.of(family.quench())));
            sheet.add(new Entry.Words(
                    "like",
                    "Then",
                    Phrase.of("Harden a coupon so and file it; temper it as " + like
                            + ", the cooler end first, and file it again, before the part is risked.")));
        }
    }

    /** Cautions stand with the step they belong to: the one that is named first. */
    private static Sheet finished(Sheet.Builder sheet, List<Finding> findings, Set<String> hazards) {
        List<Finding> all = new ArrayList<>();
        for (Hazard hazard : Hazards.of(hazards.toArray(String[]::new))) {
            all.add(new Finding.Caution(Phrase.of(hazard.text()), Phrase.of(""), Phrase.of("")));
        }
        all.addAll(findings);
        return sheet.findings(all).build();
    }
}
