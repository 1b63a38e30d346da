package org.strawblue.core.job.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.heat.HeatSource;
import org.strawblue.core.job.Job;
import org.strawblue.core.job.Unknown;
import org.strawblue.core.quantity.Band;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Phrase;
import org.strawblue.core.quantity.Quantity;
import org.strawblue.core.steel.Temper;
import org.strawblue.core.steel.Tempering;
import org.strawblue.core.table.Row;
import org.strawblue.core.table.Table;

/** What each thing that is not known costs in certainty: computed where it can be, from {@code unknowns.csv} otherwise. */
final class UnknownCosts {

    private static final Map<String, String> WORDS = Table.of(Job.class, "unknowns.csv").rows().stream()
            .collect(Collectors.toMap(r -> r.text("what"), UnknownCosts::text));

    private static final List<String> SECTIONS = List.of("parts", "pockets", "shop");

    private UnknownCosts() {}

    private static String text(Row row) {
        return row.text("text");
    }

    static List<Phrase> of(Job job, List<PartRoute> routes) {
        List<Phrase> costs = new ArrayList<>();
        job.unknowns().forEach(u -> costs.add(said(u, routes)));
        costs.addAll(unsaid(routes));
        return costs;
    }

    private static Phrase said(Unknown unknown, List<PartRoute> routes) {
        Optional<PartRoute> route = routes.stream()
                .filter(r -> unknown.path().contains(r.piece().name()))
                .findFirst();
        Optional<Phrase> computed = route.flatMap(PartRoute::temper).flatMap(t -> computed(unknown, t));
        String place = place(unknown);
        return computed.map(p -> new Phrase(place + ": " + p.template(), p.amounts()))
                .orElseGet(() -> Phrase.of(place + ": " + WORDS.getOrDefault(unknown.what(), WORDS.get("other"))));
    }

    /** "pockets / return spring / cycles" is a path; the reader wants the thing: "return spring, cycles". */
    private static String place(Unknown unknown) {
        String[] words = unknown.path().replace("{}", "{ }").split(" / ");
        int from = words.length > 1 && SECTIONS.contains(words[0]) ? 1 : 0;
        return String.join(", ", Arrays.asList(words).subList(from, words.length));
    }

    private static Optional<Phrase> computed(Unknown unknown, TemperPlan plan) {
        if (!unknown.path().contains("temper")) {
            return Optional.empty();
        }
        return switch (unknown.what()) {
            case "time" -> Optional.of(time(plan));
            case "with", "error" ->
                Optional.of(Phrase.of(
                        "not known; the usual error of a " + plan.source().name() + " moves the hardness over {}.",
                        plan.errorCost()));
            default -> Optional.empty();
        };
    }

    private static Phrase time(TemperPlan plan) {
        Estimate usual = Practice.temperTime(plan.source(), plan.section());
        Band moved = Band.between(
                Dimension.HARDNESS, at(plan, usual.low() * plan.times()), at(plan, usual.high() * plan.times()));
        return Phrase.of(
                "not known; planned for {}. Anything from {} to {} at the same heat gives {}.",
                Quantity.time(plan.seconds()),
                Quantity.time(usual.low()),
                Quantity.time(usual.high()),
                moved);
    }

    private static double at(TemperPlan plan, double seconds) {
        return Tempering.hardness(plan.steel(), List.of(new Temper(plan.kelvin(), seconds)))
                .value()
                .map(Estimate::value)
                .orElse(plan.hardness().value());
    }

    /** What a job file does not even mention, but which costs certainty all the same: once for each heat, the worst part. */
    private static List<Phrase> unsaid(List<PartRoute> routes) {
        Map<HeatSource, PartRoute> worst = new LinkedHashMap<>();
        for (PartRoute route : routes) {
            route.temper()
                    .filter(t -> t.error().byInstrument().isEmpty() && !(t.source() instanceof HeatSource.Torch))
                    .ifPresent(t -> worst.merge(t.source(), route, (a, b) -> cost(b) > cost(a) ? b : a));
        }
        return worst.values().stream().map(UnknownCosts::unsaid).toList();
    }

    private static double cost(PartRoute route) {
        return route.temper().map(t -> t.errorCost().width()).orElse(0.0);
    }

    private static Phrase unsaid(PartRoute route) {
        TemperPlan plan = route.temper().orElseThrow();
        return Phrase.of(
                "How true the " + plan.source().name() + " runs: its setting may be {} off, which moves the "
                        + route.piece().name() + " over {}. An oven thermometer or two crayons would halve that.",
                Quantity.temperatureDifference(plan.error().half()),
                plan.errorCost());
    }
}
