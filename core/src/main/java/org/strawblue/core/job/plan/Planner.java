package org.strawblue.core.job.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.strawblue.core.job.Item;
import org.strawblue.core.job.Job;
import org.strawblue.core.job.JobCard;
import org.strawblue.core.job.Stage;
import org.strawblue.core.job.Step;
import org.strawblue.core.quantity.Phrase;
import org.strawblue.core.spring.MeasuredSpring;

/** Works a whole job out into its card. */
public final class Planner {

    private Planner() {}

    public static JobCard plan(Job job) {
        List<MeasuredSpring> drawer = job.shop().drawer().orElse(List.of());
        List<PartRoute> routes =
                job.parts().stream().map(piece -> PartRoute.of(job, piece)).toList();
        List<Step> pockets =
                job.pockets().stream().map(wish -> PocketSteps.of(wish, drawer)).toList();
        List<Step> steps = inOrder(routes, BlueSteps.of(job, routes), pockets);
        AssembleStep.of(job).ifPresent(steps::add);
        LockSteps.addTo(steps, job);
        return new JobCard(
                job.title(),
                routes.stream().flatMap(r -> r.summary().stream()).toList(),
                SaidOnce.of(steps),
                Stream.concat(job.findings().stream(), routes.stream().flatMap(r -> r.findings().stream()))
                        .distinct()
                        .toList(),
                UnknownCosts.of(job, routes),
                items(routes));
    }

    /**
     * All turning first; then each part from the fire to its last size without a break, since a hard part must be tempered
     * at once; then colours, springs.
     */
    private static List<Step> inOrder(List<PartRoute> routes, List<Step> colours, List<Step> pockets) {
        List<Step> steps = new ArrayList<>();
        routes.forEach(r -> steps.addAll(r.of(Stage.TURN)));
        routes.forEach(r -> r.steps().stream()
                .filter(s -> s.stage() != Stage.TURN)
                .sorted(Comparator.comparing(Step::stage))
                .forEach(steps::add));
        steps.addAll(colours);
        steps.addAll(pockets);
        return steps;
    }

    /** Each thing once; what any part has in the shop is in the shop. */
    private static List<Item> items(List<PartRoute> routes) {
        List<Item> all = new ArrayList<>();
        for (PartRoute route : routes) {
            for (Item item : route.items()) {
                if (all.stream().noneMatch(i -> i.what().equals(item.what()))) {
                    all.add(item);
                }
            }
        }
        return all;
    }

    static Phrase plain(String text) {
        return Phrase.of(text.replace("{}", "{ }"));
    }
}
