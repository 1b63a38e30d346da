package org.strawblue.benchmarks;

import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.strawblue.core.colour.Light;
import org.strawblue.core.estimate.Answer;
import org.strawblue.core.history.Trace;
import org.strawblue.core.oxide.ColourReading;
import org.strawblue.core.oxide.FilmColours;

/** Colour with its interval and rivals after one hold; temperature and light change from call to call. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class ColourBenchmark {

    private static final double LOWEST = 480;
    private static final double RISE = 0.25;
    private static final int STEPS = 400;
    private static final double HOUR = 3600;

    private final FilmColours colours = FilmColours.standard();
    private int step;

    @Benchmark
    public Answer<ColourReading> afterAHold() {
        step = (step + 1) % STEPS;
        Light light = Light.values()[step % Light.values().length];
        return colours.after(Trace.hold(LOWEST + RISE * step, HOUR), light, 0);
    }
}
