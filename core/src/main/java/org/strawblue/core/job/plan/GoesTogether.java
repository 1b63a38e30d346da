package org.strawblue.core.job.plan;

import java.util.ArrayList;
import java.util.List;
import org.strawblue.core.assembly.Oil;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.estimate.Finding;
import org.strawblue.core.fit.Chain;
import org.strawblue.core.fit.Demand;
import org.strawblue.core.fit.Draws;
import org.strawblue.core.fit.Instrument;
import org.strawblue.core.fit.Matching;
import org.strawblue.core.job.AssemblyWish;
import org.strawblue.core.quantity.Band;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Phrase;

/** Whether what slides slides and what has to have room has it, told with the step of assembly. */
final class GoesTogether {

    private static final int DRAWS = 40_000;
    private static final long SEED = 40;

    private GoesTogether() {}

    static void tell(StepDraft step, AssemblyWish wish) {
        List<Demand> all = new ArrayList<>();
        for (AssemblyWish.Slide slide : wish.slides()) {
            all.add(slide(step, slide));
        }
        for (Demand gap : wish.gaps()) {
            Estimate told = gap.chain().estimate(List.of());
            step.figure("Gap, " + gap.chain().name(), told);
            chance(step, gap, told, "Chance that it is right, ");
            all.add(gap);
        }
        if (all.size() > 1) {
            step.figure(
                    "Chance that all of these hold",
                    Chances.of(
                            Draws.of(all, DRAWS, SEED).all(), all.get(0).chain().estimate(List.of())));
        }
    }

    private static Demand slide(StepDraft step, AssemblyWish.Slide slide) {
        Instrument holeBy = Instrument.find("bore gauge").orElseThrow();
        Instrument shaftBy = Instrument.find("micrometer").orElseThrow();
        Band hole = slide.hole().limits().orElseThrow();
        Band shaft = slide.shaft().limits().orElseThrow();
        Chain chain = Matching.made(hole, holeBy, shaft, shaftBy).named(slide.name());
        Estimate clearance = chain.estimate(List.of(holeBy.basis(), shaftBy.basis()));
        Demand slides = new Demand(chain, new Band(Dimension.LENGTH, 0, Double.POSITIVE_INFINITY));
        step.figure("Clearance, " + slide.name(), clearance);
        chance(step, slides, clearance, "Chance that it slides, ");
        Oil oil = Oil.of(Math.max(0, clearance.low()));
        step.then(Phrase.of("Oil the " + plain(slide.name()) + " with " + oil.name() + "."));
        return slides;
    }

    private static void chance(StepDraft step, Demand demand, Estimate because, String what) {
        double chance = demand.chain().chanceWithin(demand.allowed());
        String name = plain(demand.chain().name());
        step.figure(what + name, Chances.of(chance, because));
        if (chance < Practice.enoughChance()) {
            step.finding(
                    new Finding.Caution(
                            Phrase.of("The " + name + " may not come out right."),
                            Phrase.of(
                                    "By its limits it comes to {}; it has to be {}.",
                                    demand.chain().worstCase(),
                                    demand.allowed()),
                            Phrase.of(
                                    "Measure the parts before the last cut and make that one size to suit; or take other limits.")));
        }
    }

    private static String plain(String name) {
        return name.replace("{}", "{ }");
    }
}
