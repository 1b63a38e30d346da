package org.strawblue.app.service;

import java.util.List;
import java.util.Map;
import org.strawblue.core.evidence.diagnosis.Cause;
import org.strawblue.core.evidence.diagnosis.Clue;
import org.strawblue.core.evidence.diagnosis.Diagnosis;
import org.strawblue.core.evidence.diagnosis.Family;
import org.strawblue.core.evidence.diagnosis.Known;
import org.strawblue.core.evidence.diagnosis.NextTest;
import org.strawblue.core.evidence.diagnosis.Ranked;
import org.strawblue.core.evidence.diagnosis.Topic;
import org.strawblue.core.evidence.diagnosis.UnknownSteel;
import org.strawblue.core.quantity.Phrase;

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
        Cautions cautions = new Cautions(sheet);
        Cause first = diagnosis.causes().get(0).cause();
        boolean atOnce = diagnosis.sure() || diagnosis.tests().isEmpty();
        if (!atOnce) {
            Clue test = diagnosis.tests().get(0).clue();
            sheet.add(new Entry.Words("first", "First", asked(test)));
            cautions.beside("first", test.hazards());
        }
        sheet.add(new Entry.Words("remedy", atOnce ? "Do this" : "If it is cause 1", Phrase.of(first.remedy())));
        cautions.beside("remedy", first.hazards());
        causes(sheet, diagnosis.causes());
        tests(sheet, diagnosis.tests(), "--seen ");
        return sheet.findings(diagnosis.findings()).build();
    }

    private static Phrase asked(Clue clue) {
        return Phrase.of(clue.question() + " " + clue.how());
    }

    private static void causes(Sheet.Builder sheet, List<Ranked> causes) {
        int place = 0;
        for (Ranked ranked : causes.subList(0, Math.min(CAUSES, causes.size()))) {
            place++;
            sheet.add(new Entry.Words("cause_" + place + "_what", place + ". " + ranked.words(), told(ranked)));
            sheet.add("cause_" + place, "chance", ranked.chance());
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
            String asked = option + clue.key() + (option.endsWith(" ") ? "=" : " ");
            String label = place == 1 ? "What tells them apart" : "";
            sheet.add(new Entry.Words("test_" + place, label, Phrase.of(clue.question())));
            sheet.add(new Entry.Words("test_" + place + "_answer", "", Phrase.of(asked + String.join("|", answers))));
        }
    }

    /** @param seen answers by clue */
    public static Sheet steel(Map<String, String> seen) {
        UnknownSteel steel = UnknownSteel.of(seen);
        Sheet.Builder sheet = Sheet.titled("What steel it is");
        Cautions cautions = new Cautions(sheet);
        steel.advice().ifPresent(family -> advice(sheet, family, cautions));
        if (steel.advice().isEmpty()) {
            sheet.add(new Entry.Words("no_advice", "How to treat it", Phrase.of("Not told: it would be a guess.")));
        }
        if (steel.advice().isEmpty() && !steel.tests().isEmpty()) {
            Clue next = steel.tests().get(0).clue();
            sheet.add(new Entry.Words("next", "Next", asked(next)));
            cautions.beside("next", next.hazards());
        }
        causes(sheet, steel.families());
        tests(sheet, steel.tests(), "--");
        return sheet.findings(steel.findings()).build();
    }

    private static void advice(Sheet.Builder sheet, Family family, Cautions cautions) {
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
        if (!family.hardens()) {
            cautions.beside("advice", family.hazards());
        } else {
            String like = String.join(
                    ", ", family.grades().stream().map(g -> g.name()).toList());
            sheet.add(new Entry.Words("quench", "Quench in", Phrase.of(family.quench())));
            cautions.beside("quench", family.hazards());
            sheet.add(new Entry.Words(
                    "like",
                    "Then",
                    Phrase.of("Harden a coupon so and file it; temper it as " + like
                            + ", the cooler end first, and file it again, before the part is risked.")));
        }
    }
}
