package org.strawblue.core.job.plan;

import java.util.List;
import java.util.Optional;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.evidence.HardnessCheck;
import org.strawblue.core.job.Stage;
import org.strawblue.core.job.Step;
import org.strawblue.core.quantity.Band;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Quantity;

/** What to try after the quench and after the temper, with the means at hand. */
final class ProveSteps {

    private ProveSteps() {}

    /** After the quench: is it hard at all? */
    static Step afterQuench(Brief brief, Estimate asQuenched) {
        StepDraft step = new StepDraft(Stage.PROVE_HARD, brief.piece().name()).hazards("brittle", "file-test");
        step.figure("Hardness as quenched", asQuenched);
        List<Double> files = levels(brief);
        Optional<Double> skates = below(files, asQuenched.low() - Practice.fileMargin());
        if (skates.isPresent()) {
            step.lead("A {} file must skate over a cleaned spot.", Quantity.hardness(skates.get()));
        } else if (asQuenched.low() >= Practice.ordinaryFile().low() - Practice.fileMargin()) {
            step.lead("A new file must skate over a cleaned spot, or only just mark it.");
        } else {
            step.lead(
                    "A file may bite: this quench should give {}, and a new file has {}.",
                    asQuenched.band(),
                    Practice.ordinaryFile().band());
        }
        return step.reason(
                        "If the file bites freely, stone off a few hundredths first: scale and the decarburised skin are"
                                + " soft and prove nothing. If it still bites, the part did not harden: do not temper it, harden again"
                                + " after normalising.")
                .reason(
                        "It is worth doing: without it nobody knows afterwards whether a soft part was tempered too far or"
                                + " never hardened.")
                .done();
    }

    /** After the temper: between which files does it lie? */
    static Step afterTemper(Brief brief, Estimate hardness, Band wanted) {
        StepDraft step = new StepDraft(Stage.PROVE_TEMPERED, brief.piece().name()).hazards("file-test");
        List<Double> files = levels(brief);
        Optional<Double> skates = below(files, wanted.low());
        Optional<Double> bites = above(files, wanted.high());
        if (skates.isPresent() && bites.isPresent()) {
            step.lead(
                    "The {} file should skate and the {} file bite.",
                    Quantity.hardness(skates.get()),
                    Quantity.hardness(bites.get()));
        } else if (wanted.high() < Practice.ordinaryFile().low() - Practice.fileMargin()) {
            step.lead("A new file should now bite, with effort, where it skated before.");
        } else {
            step.lead("A new file still slips at {} and proves nothing: go by the crayons, and by the colour.", wanted);
        }
        step.figure("Hardness to expect", hardness);
        if (files.isEmpty()) {
            step.reason(
                    "An ordinary file of about {} cannot tell hardness below its own; graded files from {} would.",
                    Practice.ordinaryFile().quantity(),
                    straddling(wanted));
        }
        return step.reason(
                        "Too hard: temper again a little hotter, nothing is lost. Too soft: it must be hardened again.")
                .done();
    }

    /** The files of the usual set next to the wanted hardness on either side [HRC]. */
    private static Band straddling(Band wanted) {
        double step = Practice.fileStep();
        return new Band(
                Dimension.HARDNESS, Math.floor(wanted.low() / step) * step, Math.ceil(wanted.high() / step) * step);
    }

    private static List<Double> levels(Brief brief) {
        return brief.job().shop().hardnessChecks().stream()
                .filter(HardnessCheck.GradedFiles.class::isInstance)
                .map(HardnessCheck.GradedFiles.class::cast)
                .findFirst()
                .map(files -> files.levels().isEmpty() ? Practice.fileSet() : files.levels())
                .orElse(List.of());
    }

    private static Optional<Double> below(List<Double> levels, double hrc) {
        return levels.stream().filter(l -> l <= hrc).reduce((a, b) -> b);
    }

    private static Optional<Double> above(List<Double> levels, double hrc) {
        return levels.stream().filter(l -> l >= hrc).findFirst();
    }
}
