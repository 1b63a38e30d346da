package org.strawblue.benchmarks;

import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.strawblue.core.estimate.Answer;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.steel.Composition;
import org.strawblue.core.steel.Element;
import org.strawblue.core.steel.Steel;
import org.strawblue.core.steel.Temper;
import org.strawblue.core.steel.Tempering;
import org.strawblue.core.steel.TemperingLaw;

/** Hardness with its interval after one temper; the temperature changes from call to call. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class TemperBenchmark {

    private static final double LOWEST = 430;
    private static final double RISE = 0.25;
    private static final int STEPS = 400;
    private static final double HOUR = 3600;

    private final TemperingLaw byCurve =
            Tempering.law(Steel.ofGrade("O1")).value().orElseThrow();
    private final TemperingLaw byComposition = Tempering.law(
                    Steel.of(Composition.carbon(0.6).with(Element.MN, 0.8)))
            .value()
            .orElseThrow();
    private int step;

    @Benchmark
    public Answer<Estimate> byPublishedCurve() {
        return byCurve.hardness(next());
    }

    @Benchmark
    public Answer<Estimate> byComposition() {
        return byComposition.hardness(next());
    }

    private Temper next() {
        step = (step + 1) % STEPS;
        return new Temper(LOWEST + RISE * step, HOUR);
    }
}
