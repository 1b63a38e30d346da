package org.strawblue.benchmarks.accuracy;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Errors of a set of predictions, and how many of their 80 % intervals hold the measured value. */
final class Score {

    private final List<Double> errors = new ArrayList<>();
    private double halfWidths;
    private int inside;

    void add(double measured, double value, double low, double high) {
        errors.add(measured - value);
        halfWidths += (high - low) / 2;
        if (low <= measured && measured <= high) {
            inside++;
        }
    }

    int size() {
        return errors.size();
    }

    double rootMeanSquare() {
        return Math.sqrt(errors.stream().mapToDouble(e -> e * e).average().orElse(Double.NaN));
    }

    double covered() {
        return (double) inside / errors.size();
    }

    @Override
    public String toString() {
        return String.format(
                Locale.ROOT,
                "n %4d  RMSE %4.2f  MAE %4.2f  bias %+5.2f  in 80 %% interval %.3f  half-width %.2f",
                size(),
                rootMeanSquare(),
                errors.stream().mapToDouble(Math::abs).average().orElse(Double.NaN),
                errors.stream().mapToDouble(e -> e).average().orElse(Double.NaN),
                covered(),
                halfWidths / size());
    }
}
