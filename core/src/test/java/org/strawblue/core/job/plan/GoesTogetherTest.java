package org.strawblue.core.job.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.strawblue.core.assembly.Lock;
import org.strawblue.core.assembly.Metal;
import org.strawblue.core.assembly.Strength;
import org.strawblue.core.colour.Light;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.fit.Chain;
import org.strawblue.core.fit.Demand;
import org.strawblue.core.fit.Limits;
import org.strawblue.core.fit.Link;
import org.strawblue.core.fit.Spread;
import org.strawblue.core.job.AssemblyWish;
import org.strawblue.core.job.Figure;
import org.strawblue.core.job.Job;
import org.strawblue.core.job.JobCard;
import org.strawblue.core.job.Stage;
import org.strawblue.core.job.Step;
import org.strawblue.core.job.UnitSystem;
import org.strawblue.core.oxide.ColourName;
import org.strawblue.core.part.Feature;
import org.strawblue.core.part.ScrewThread;
import org.strawblue.core.quantity.Band;
import org.strawblue.core.quantity.Dimension;

/** What the card tells of parts that go together. */
class GoesTogetherTest {

    private static final AssemblyWish.Slide SLIDE = slide("H7", "g6");

    private static AssemblyWish.Slide slide(String hole, String shaft) {
        return new AssemblyWish.Slide(
                "pin in its bush",
                new Feature(
                        "bore", Feature.Kind.BORE, 0.008, Limits.of(0.008, hole).value()),
                new Feature(
                        "pin",
                        Feature.Kind.OUTSIDE,
                        0.008,
                        Limits.of(0.008, shaft).value()));
    }

    private static Demand gap(double least) {
        Spread size = new Spread.Within(new Band(Dimension.LENGTH, 0.0119, 0.0121));
        return new Demand(
                new Chain("reach", List.of(Link.plus("tip", size), Link.minus("plate", Spread.Exact.length(0.010)))),
                new Band(Dimension.LENGTH, least, Double.POSITIVE_INFINITY));
    }

    private static AssemblyWish.LockedScrew screw(String thread, String strength) {
        ScrewThread screw = ScrewThread.find(thread).value().orElseThrow();
        return new AssemblyWish.LockedScrew(
                "preload screw",
                new Lock(
                        screw,
                        screw.major(),
                        Strength.find(strength).orElseThrow(),
                        Metal.find("steel").orElseThrow(),
                        293.15,
                        OptionalDouble.empty()));
    }

    private static JobCard card(AssemblyWish wish) {
        return Planner.plan(new Job(
                "test",
                UnitSystem.METRIC,
                Light.DAYLIGHT,
                List.of(Jobs.pin("O1")),
                List.of(),
                wish,
                Jobs.shop(),
                List.of(),
                List.of()));
    }

    private static Estimate figure(Step step, String label) {
        return step.figures().stream()
                .filter(f -> f.label().startsWith(label))
                .map(Figure::estimate)
                .findFirst()
                .orElseThrow();
    }

    private static Step assemble(JobCard card) {
        return card.steps().stream()
                .filter(s -> s.stage() == Stage.ASSEMBLE && s.part().isEmpty())
                .findFirst()
                .orElseThrow();
    }

    /** H7/g6 at 8 mm: 5 to 29 µm by ISO 286, so 17 in the middle; the instruments' errors are in the chance. */
    @Test
    void aSlideIsToldWithItsChance() {
        Step step = assemble(card(new AssemblyWish(List.of(SLIDE), List.of(), List.of(), List.of())));
        assertThat(figure(step, "Clearance").value()).isCloseTo(17e-6, within(0.1e-6));
        assertThat(figure(step, "Chance that it slides").value()).isBetween(0.9, 0.9999);
        assertThat(step.findings()).isEmpty();
        assertThat(step.then()).anyMatch(p -> p.template().contains("Oil the"));
    }

    /** A transition fit that is meant to slide is cautioned, with what its limits allow. */
    @Test
    void aPairThatMayNotSlideIsCautioned() {
        Step step = assemble(card(new AssemblyWish(List.of(slide("H7", "k6")), List.of(), List.of(), List.of())));
        assertThat(step.findings()).hasSize(1);
        assertThat(figure(step, "Chance that it slides").value()).isBetween(0.3, 0.8);
    }

    /** All together are never likelier than the least likely of them. */
    @Test
    void togetherIsNoLikelierThanTheLeast() {
        Step step = assemble(card(new AssemblyWish(List.of(SLIDE), List.of(gap(0.00195)), List.of(), List.of())));
        double gap = figure(step, "Chance that it is right").value();
        double all = figure(step, "Chance that all").value();
        assertThat(gap).isCloseTo(0.75, within(0.01));
        assertThat(all).isLessThanOrEqualTo(gap + 0.01).isGreaterThan(0.6);
    }

    /** The locked screw comes after the dry trial, warns of the slide beside it, and tells of fumes where only heat frees it. */
    @Test
    void screwsAreLockedLast() {
        JobCard card = card(new AssemblyWish(
                List.of(SLIDE), List.of(), List.of(screw("M4", "low"), screw("M6", "high")), List.of()));
        List<Step> steps = card.steps();
        Step last = steps.get(steps.size() - 1);
        assertThat(steps.get(steps.size() - 3)).isEqualTo(assemble(card));
        assertThat(last.part()).isEqualTo("preload screw");
        assertThat(last.hazards()).isNotEmpty();
        assertThat(last.findings()).anyMatch(f -> f.what().template().contains("fumes"));
        assertThat(steps.get(steps.size() - 2).findings())
                .anyMatch(f -> f.what().template().contains("sliding clearance"));
    }

    /** Blued above its temper the pin softens below what is wanted, and the card says so; at straw it does not. */
    @Test
    void aColourThatSoftensIsCautioned() {
        Step blue = colour(ColourName.LIGHT_BLUE, OptionalDouble.empty());
        assertThat(blue.findings()).anyMatch(f -> f.what().template().contains("softens"));
        assertThat(figure(blue, "Hardness when so coloured").value()).isLessThan(Jobs.WANTED.low());
        Step straw = colour(ColourName.FAINT_STRAW, OptionalDouble.empty());
        assertThat(straw.findings()).noneMatch(f -> f.what().template().contains("softens"));
        assertThat(colour(ColourName.LIGHT_BLUE, OptionalDouble.of(430)).findings())
                .isNotEmpty();
    }

    private static Step colour(ColourName name, OptionalDouble kelvin) {
        JobCard card = card(new AssemblyWish(
                List.of(), List.of(), List.of(), List.of(new AssemblyWish.Finish("pin", name, kelvin))));
        return card.steps().stream()
                .filter(s -> s.stage() == Stage.FINISH)
                .reduce((a, b) -> b)
                .orElseThrow();
    }

    @Test
    void nothingIsSaidWhereNothingIsAsked() {
        assertThat(AssemblyWish.NONE.isEmpty()).isTrue();
        JobCard card = card(AssemblyWish.NONE);
        assertThat(card.steps()).noneMatch(s -> s.stage() == Stage.ASSEMBLE);
        assertThat(Optional.of(SLIDE.name())).contains("pin in its bush");
    }
}
