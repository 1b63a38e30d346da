package org.strawblue.core.fit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;

/**
 * Whether several demands on one assembly hold together, by drawing its parts: chains that share a part share its draw,
 * which no sum of single chances can tell. Standard error √(p(1 − p)/N). The same seed gives the same answer.
 *
 * @param each chance [1] of each demand
 * @param all chance [1] that all hold
 * @param error standard error [1] of {@code all}
 */
public record Draws(List<Double> each, double all, double error) {

    public Draws {
        each = List.copyOf(each);
    }

    public static Draws of(List<Demand> demands, int samples, long seed) {
        Map<String, Integer> place = new LinkedHashMap<>();
        List<Spread> spreads = new ArrayList<>();
        for (Demand demand : demands) {
            for (Link link : demand.chain().links()) {
                if (place.putIfAbsent(link.part(), spreads.size()) == null) {
                    spreads.add(link.spread());
                }
            }
        }
        SplittableRandom random = new SplittableRandom(seed);
        double[] drawn = new double[spreads.size()];
        int[] held = new int[demands.size()];
        int together = 0;
        for (int i = 0; i < samples; i++) {
            for (int k = 0; k < drawn.length; k++) {
                drawn[k] = spreads.get(k).at(random.nextDouble());
            }
            together += holds(demands, place, drawn, held) ? 1 : 0;
        }
        double all = (double) together / samples;
        List<Double> each = new ArrayList<>();
        for (int n : held) {
            each.add((double) n / samples);
        }
        return new Draws(each, all, Math.sqrt(all * (1 - all) / samples));
    }

    private static boolean holds(List<Demand> demands, Map<String, Integer> place, double[] drawn, int[] held) {
        boolean all = true;
        for (int d = 0; d < held.length; d++) {
            double gap = 0;
            for (Link link : demands.get(d).chain().links()) {
                gap += link.weight() * drawn[place.getOrDefault(link.part(), 0)];
            }
            boolean works = demands.get(d).allowed().contains(gap);
            held[d] += works ? 1 : 0;
            all &= works;
        }
        return all;
    }
}
