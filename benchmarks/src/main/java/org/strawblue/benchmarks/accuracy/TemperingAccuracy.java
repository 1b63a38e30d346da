package org.strawblue.benchmarks.accuracy;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.strawblue.core.estimate.Answer;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.steel.Coupon;
import org.strawblue.core.steel.Steel;
import org.strawblue.core.steel.Tempering;

/**
 * Measures the shipped tempering laws on the open tempering data set (CC BY 4.0), whose path is the only argument. Where
 * the rows are those the coefficients were fitted to, the figures by composition are better than a new steel will see: for
 * that see {@code verification/tempering/fit.py}, which leaves each grade out in turn.
 */
public final class TemperingAccuracy {

    private static final double HOUR = 3600;
    private static final int CURVE = 8;

    private TemperingAccuracy() {}

    private enum Known {
        NOTHING,
        QUENCHED,
        CURVE
    }

    public static void main(String[] args) throws IOException {
        List<TemperingRow> rows = TemperingRow.read(Path.of(args[0]));
        for (Known known : Known.values()) {
            System.out.println("\nknown of the heat: " + known);
            measure(rows, known).forEach((stratum, score) -> System.out.printf("  %-24s %s%n", stratum, score));
        }
    }

    private static Map<String, Score> measure(List<TemperingRow> rows, Known known) {
        Map<String, Score> scores = new LinkedHashMap<>();
        Map<String, List<TemperingRow>> heats = rows.stream()
                .collect(Collectors.groupingBy(TemperingRow::heat, LinkedHashMap::new, Collectors.toList()));
        int refused = 0;
        for (List<TemperingRow> heat : heats.values()) {
            List<TemperingRow> anchor = known == Known.CURVE ? anchor(heat) : List.of();
            if (known == Known.QUENCHED && heat.get(0).asQuenched().isEmpty()) {
                continue;
            }
            Steel steel = steel(heat.get(0), anchor, known);
            for (TemperingRow row : heat) {
                if (!anchor.contains(row)) {
                    refused += judge(row, Tempering.hardness(steel, List.of(row.temper())), scores);
                }
            }
        }
        System.out.println("  not answered: " + refused);
        return scores;
    }

    private static Steel steel(TemperingRow row, List<TemperingRow> anchor, Known known) {
        Steel steel = Steel.of(row.composition())
                .with(anchor.stream().map(r -> new Coupon(r.temper(), r.hrc())).toList());
        return known == Known.QUENCHED && row.asQuenched().isPresent()
                ? steel.asQuenched(row.asQuenched().getAsDouble())
                : steel;
    }

    private static List<TemperingRow> anchor(List<TemperingRow> heat) {
        List<TemperingRow> oneHour =
                heat.stream().filter(r -> r.temper().seconds() == HOUR).toList();
        return oneHour.size() >= CURVE
                ? oneHour
                : heat.stream()
                        .filter(r -> r.temper().seconds() == HOUR * 5 / 2)
                        .toList();
    }

    private static int judge(TemperingRow row, Answer<Estimate> answer, Map<String, Score> scores) {
        if (answer.value().isEmpty()) {
            return 1;
        }
        Estimate e = answer.value().get();
        for (String stratum : strata(row)) {
            scores.computeIfAbsent(stratum, s -> new Score()).add(row.hrc(), e.value(), e.low(), e.high());
        }
        return 0;
    }

    private static List<String> strata(TemperingRow row) {
        List<String> strata = new ArrayList<>(List.of("all answered"));
        if (row.study().equals("2010") && row.temper().seconds() < HOUR) {
            return List.of("2010, below 1 h (not at temperature)");
        }
        strata.add(row.hrc() >= 20 ? "HRC >= 20" : "HRC < 20");
        strata.add(row.study());
        double hours = row.temper().seconds() / HOUR;
        strata.add(
                hours < 0.1 ? "below 6 min" : hours < 1 ? "10 to 15 min" : hours < 3 ? "1 to 2.5 h" : "4 h and longer");
        strata.add(row.celsius() < 250 ? "below 250 C" : row.celsius() < 400 ? "250 to 400 C" : "400 C and above");
        return strata;
    }
}
