package org.strawblue.core.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.strawblue.core.quantity.Band;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Units;
import org.strawblue.core.source.Basis;
import org.strawblue.core.source.Standing;
import org.strawblue.core.table.Row;
import org.strawblue.core.table.Table;

/**
 * Deviations from the nominal size, ISO 286-1.
 *
 * <p>Shafts: es of a to h and ei of k to u from the table, the other one IT away; k only in grades 4 to 7, else 0; js
 * half on either side. Holes: EI = −es for A to H; ES = −ei + Δ for K, M, N up to IT8 and P to U up to IT7, Δ = IT(n) −
 * IT(n − 1), 0 in the first step; above those grades ES = −ei, but 0 for N above the first step. Source: the standard's
 * rules as printed with the tables; agree with 136 printed hole cells.
 */
final class Deviations {

    private static final List<Row> ROWS =
            Table.of(Deviations.class, "deviations.csv").rows();
    private static final double MICRON = Units.of(Dimension.LENGTH, "µm").factor();
    private static final int K_FROM = 4;
    private static final int K_TO = 7;
    private static final int CLOSE_HOLE = 8;

    private Deviations() {}

    static Optional<Band> shaft(double nominal, String letter, int grade) {
        OptionalDouble width = ToleranceGrades.of(nominal, grade);
        if (width.isEmpty()) {
            return Optional.empty();
        }
        double it = width.getAsDouble();
        if (letter.equals("js")) {
            return Optional.of(band(-it / 2, it / 2));
        }
        return row(nominal, letter).map(r -> shaft(r, grade, it));
    }

    private static Band shaft(Row row, int grade, double it) {
        boolean zero = row.text("letter").equals("k") && (grade < K_FROM || grade > K_TO);
        double deviation = zero ? 0 : row.number("um") * MICRON;
        return upper(row) ? band(deviation - it, deviation) : band(deviation, deviation + it);
    }

    static Optional<Band> hole(double nominal, String letter, int grade) {
        OptionalDouble width = ToleranceGrades.of(nominal, grade);
        if (width.isEmpty()) {
            return Optional.empty();
        }
        double it = width.getAsDouble();
        if (letter.equals("JS") || letter.equals("Js")) {
            return Optional.of(band(-it / 2, it / 2));
        }
        String small = String.valueOf(Character.toLowerCase(letter.charAt(0)));
        return row(nominal, small).map(r -> hole(nominal, r, grade, it));
    }

    private static Band hole(double nominal, Row row, int grade, double it) {
        double deviation = row.number("um") * MICRON;
        if (upper(row)) {
            return band(-deviation, -deviation + it);
        }
        double top = closeHole(row, grade)
                ? -deviation + delta(nominal, grade, it)
                : row.text("letter").equals("n") && !ToleranceGrades.firstStep(nominal) ? 0 : -deviation;
        return band(top - it, top);
    }

    private static boolean closeHole(Row row, int grade) {
        boolean early = "kmn".contains(row.text("letter"));
        return grade <= (early ? CLOSE_HOLE : CLOSE_HOLE - 1);
    }

    private static double delta(double nominal, int grade, double it) {
        OptionalDouble finer = ToleranceGrades.of(nominal, grade - 1);
        return ToleranceGrades.firstStep(nominal) || finer.isEmpty() ? 0 : it - finer.getAsDouble();
    }

    static List<Basis> bases(double nominal, String letter, int grade) {
        List<Basis> all = new ArrayList<>(ToleranceGrades.bases(nominal, grade));
        String small = String.valueOf(Character.toLowerCase(letter.charAt(0)));
        if (letter.length() == 1) {
            row(nominal, small)
                    .map(r -> new Basis("deviation " + letter, r.text("source"), Standing.of(r.text("standing"))))
                    .ifPresent(all::add);
        }
        return all;
    }

    private static Optional<Row> row(double nominal, String letter) {
        return ROWS.stream()
                .filter(r -> r.text("letter").equals(letter) && ToleranceGrades.within(r, nominal))
                .findFirst();
    }

    private static boolean upper(Row row) {
        return row.text("which").equals("es");
    }

    private static Band band(double low, double high) {
        return new Band(Dimension.LENGTH, low, high);
    }
}
