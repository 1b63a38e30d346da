package org.strawblue.core.job.plan;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.strawblue.core.estimate.Answer;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.estimate.Finding;
import org.strawblue.core.heat.HeatSource;
import org.strawblue.core.heat.HeatSources;
import org.strawblue.core.part.PartShape;
import org.strawblue.core.quantity.Band;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Phrase;
import org.strawblue.core.quantity.Quantity;
import org.strawblue.core.steel.Steel;
import org.strawblue.core.steel.Temper;
import org.strawblue.core.steel.TemperChoice;
import org.strawblue.core.steel.Tempering;

/**
 * How a part is to be tempered.
 *
 * @param seconds time at heat of each temper [s]
 * @param times how often
 * @param kelvin temperature of the metal to aim for [K]
 * @param window temperatures [K] that are expected to give the wanted hardness
 * @param error of the temperature [K]
 * @param hardness after it all [HRC], the steel's scatter and the temperature's error together
 * @param errorCost hardness gained and lost by the temperature's error [HRC]
 */
record TemperPlan(
        HeatSource source,
        Steel steel,
        PartShape section,
        double seconds,
        int times,
        double kelvin,
        Band window,
        TemperatureError error,
        Estimate hardness,
        Band errorCost) {

    /** The window where there is one; a single temperature that was asked for with its error. */
    Band heat() {
        return window.width() > 0
                ? window
                : new Band(Dimension.TEMPERATURE, kelvin - error.half(), kelvin + error.half());
    }

    /** All the time at heat [s]: repeated equal tempers soften as one of their whole length. */
    double secondsInAll() {
        return seconds * times;
    }

    /** In the heat the job names; else in the first of the shop's that gets hot enough. */
    static Answer<TemperPlan> of(Brief brief, Steel steel, Aim aim) {
        List<HeatSource> heats = heats(brief);
        return heats.stream()
                .map(heat -> in(heat, brief, steel, aim))
                .filter(answer -> answer.value().filter(TemperPlan::reachable).isPresent())
                .findFirst()
                .orElseGet(() -> in(heats.get(0), brief, steel, aim));
    }

    private boolean reachable() {
        return kelvin <= source.traits().reach().high();
    }

    private static Answer<TemperPlan> in(HeatSource source, Brief brief, Steel steel, Aim aim) {
        double seconds = brief.piece()
                .temper()
                .time()
                .orElseGet(() -> Practice.temperTime(source, brief.shape()).value());
        int times = brief.piece().temper().times().orElse(brief.hardensInAir() ? 2 : 1);
        return choice(brief, steel, aim, seconds * times)
                .then(choice -> finished(brief, source, steel, seconds, times, choice, aim));
    }

    /** A steel that hardens in air wants hours, so an oven or kiln comes first for it; a kiln that hardens also tempers. */
    private static List<HeatSource> heats(Brief brief) {
        Optional<HeatSource> wished = brief.piece().temper().with();
        if (wished.isPresent()) {
            return List.of(wished.get());
        }
        List<HeatSource> shop = new ArrayList<>(brief.job().shop().temperingHeat());
        brief.job().shop().hardeningHeat().stream()
                .filter(HeatSource.Kiln.class::isInstance)
                .forEach(shop::add);
        if (shop.isEmpty()) {
            return List.of(HeatSources.of("kitchen-oven"));
        }
        if (brief.hardensInAir()) {
            shop.sort(Comparator.comparing(heat -> !holdsForHours(heat)));
        }
        return shop;
    }

    private static boolean holdsForHours(HeatSource heat) {
        return heat instanceof HeatSource.Oven || heat instanceof HeatSource.Kiln;
    }

    private static Answer<TemperChoice> choice(Brief brief, Steel steel, Aim aim, double seconds) {
        if (brief.piece().temper().temperature().isEmpty()) {
            return Tempering.temperature(steel, aim.band(), seconds);
        }
        double kelvin = brief.piece().temper().temperature().getAsDouble();
        return Tempering.hardness(steel, List.of(new Temper(kelvin, seconds)))
                .map(hardness -> new TemperChoice(
                        Estimate.of(Dimension.TEMPERATURE, kelvin, kelvin, kelvin, hardness.bases()),
                        new Band(Dimension.TEMPERATURE, kelvin, kelvin),
                        hardness,
                        hardness.chanceWithin(aim.band())));
    }

    private static Answer<TemperPlan> finished(
            Brief brief, HeatSource source, Steel steel, double seconds, int times, TemperChoice choice, Aim aim) {
        double kelvin = choice.aim().value();
        TemperatureError error = TemperatureError.of(source, kelvin, brief.job().shop());
        Band cost =
                cost(steel, kelvin, seconds * times, error, choice.hardness().value());
        Estimate hardness = choice.hardness()
                .widened(
                        choice.hardness().value() - cost.low(),
                        cost.high() - choice.hardness().value(),
                        Collections.singleton(error.basis()));
        TemperPlan plan = new TemperPlan(
                source, steel, brief.shape(), seconds, times, kelvin, choice.window(), error, hardness, cost);
        List<Finding> findings = new ArrayList<>();
        plan.tooHot().ifPresent(findings::add);
        plan.unlikely(aim).ifPresent(findings::add);
        return Answer.of(plan, findings);
    }

    /** Hardness [HRC] where the metal is as much hotter, and colder, as its error allows. */
    private static Band cost(Steel steel, double kelvin, double seconds, TemperatureError error, double middle) {
        double hot = at(steel, kelvin + error.half(), seconds).orElse(middle);
        double cold = at(steel, kelvin - error.half(), seconds).orElse(middle);
        return new Band(
                Dimension.HARDNESS, Math.min(middle, Math.min(hot, cold)), Math.max(middle, Math.max(hot, cold)));
    }

    private static Optional<Double> at(Steel steel, double kelvin, double seconds) {
        return Tempering.hardness(steel, List.of(new Temper(kelvin, seconds)))
                .value()
                .map(Estimate::value);
    }

    private Optional<Finding> tooHot() {
        Estimate reach = source.traits().reach();
        if (kelvin <= reach.low()) {
            return Optional.empty();
        }
        Phrase what = Phrase.of(
                "The " + source.name() + " may not reach {}; such a one gets to {}.",
                Quantity.temperature(kelvin),
                reach.band());
        Phrase why = Phrase.of("The temper is only as soft as the hottest the metal gets.");
        Phrase remedy = Phrase.of("Try it empty with a thermometer first, or temper in something hotter.");
        return Optional.of(
                kelvin > reach.high() ? new Finding.Stop(what, why, remedy) : new Finding.Caution(what, why, remedy));
    }

    private Optional<Finding> unlikely(Aim aim) {
        double chance = hardness.chanceWithin(aim.band());
        if (chance >= 0.5) {
            return Optional.empty();
        }
        return Optional.of(new Finding.Caution(
                Phrase.of("The chance of ending within {} is only {}.", aim.band(), Chances.told(chance)),
                Phrase.of(
                        "The steel's own scatter and the temperature's error of ±{} spread the result over {}.",
                        Quantity.temperatureDifference(error.half()),
                        hardness.band()),
                Phrase.of("Temper at the cool end first, try it, and temper again hotter if it is still too hard:"
                        + " that way round nothing is lost.")));
    }
}
