package org.strawblue.core.heat.conduction;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntToDoubleFunction;
import org.strawblue.core.heat.SteelHeat;
import org.strawblue.core.heat.course.EnergyBalance;
import org.strawblue.core.heat.course.Frame;
import org.strawblue.core.history.Place;
import org.strawblue.core.history.ThermalHistory;
import org.strawblue.core.history.Trace;

/** Keeps what a run shows: traces fine enough that straight lines between their points will do, frames, and the heat. */
final class Recorder implements Rosenbrock.Listener {

    /** A straight line between two points of a trace spans no more than this [K] ... */
    private static final double RISE = 2;

    /** ... in no fewer pieces of a step, for its curve ... */
    private static final int LEAST = 6;

    /** ... and no more. */
    private static final int MOST = 24;

    private final Map<Place, Integer> places;
    private final Map<Place, Line> lines = new EnumMap<>(Place.class);
    private final List<Frame> frames = new ArrayList<>();
    private final double frameEvery;
    private HeatFlow flow;
    private double start;
    private double nextFrame;
    private double stored;
    private double through;
    private double exchanged;
    private double[] middle = new double[0];
    private double[] scratch = new double[0];

    private static final class Line {
        final List<Double> seconds = new ArrayList<>();
        final List<Double> kelvin = new ArrayList<>();

        Trace trace() {
            return new Trace(
                    seconds.stream().mapToDouble(s -> s).toArray(),
                    kelvin.stream().mapToDouble(k -> k).toArray());
        }
    }

    Recorder(Mesh mesh, HeatFlow first, double[] y, double seconds, int frameCount) {
        this.places = mesh.places();
        this.flow = first;
        this.frameEvery = seconds / frameCount;
        places.keySet().forEach(p -> lines.put(p, new Line()));
        note(0, node -> y[node]);
        this.frames.add(frame(0, y));
        this.nextFrame = frameEvery;
    }

    /** A new spell begins at this time [s]. */
    void spell(HeatFlow next, double at, double[] y) {
        flow = next;
        start = at;
        stored -= next.stored(y);
        middle = new double[next.size()];
        scratch = new double[next.size()];
    }

    void spellEnds(double[] y) {
        stored += flow.stored(y);
    }

    @Override
    public void step(
            double from,
            double to,
            double[] y0,
            double[] y1,
            double power0,
            double power1,
            Rosenbrock.Between between) {
        double h = to - from;
        between.all(1.0 / 2, middle);
        double half = flow.rate(from + h / 2, middle, scratch);
        through += h * (power0 + 4 * half + power1) / 6;
        exchanged += h * (Math.abs(power0) + 4 * Math.abs(half) + Math.abs(power1)) / 6;
        int pieces = pieces(y0, y1);
        for (int k = 1; k < pieces; k++) {
            double share = (double) k / pieces;
            note(start + from + h * share, node -> between.at(share, node));
        }
        note(start + to, node -> y1[node]);
        while (nextFrame <= start + to + 1e-9) {
            between.all(Math.min(1, (nextFrame - start - from) / h), middle);
            frames.add(frame(nextFrame, middle));
            nextFrame += frameEvery;
        }
    }

    private int pieces(double[] y0, double[] y1) {
        double most = 0;
        for (int node : places.values()) {
            most = Math.max(most, Math.abs(SteelHeat.kelvin(y1[node]) - SteelHeat.kelvin(y0[node])));
        }
        return Math.max(LEAST, Math.min(MOST, (int) Math.ceil(most / RISE)));
    }

    private void note(double seconds, IntToDoubleFunction y) {
        places.forEach((place, node) -> {
            Line line = lines.get(place);
            if (line != null) {
                line.seconds.add(seconds);
                line.kelvin.add(SteelHeat.kelvin(y.applyAsDouble(node)));
            }
        });
    }

    private Frame frame(double seconds, double[] y) {
        double[] kelvin = new double[flow.nodes()];
        for (int i = 0; i < kelvin.length; i++) {
            kelvin[i] = SteelHeat.kelvin(y[i]);
        }
        return new Frame(seconds, kelvin);
    }

    ThermalHistory history() {
        Map<Place, Trace> traces = new EnumMap<>(Place.class);
        lines.forEach((place, line) -> traces.put(place, line.trace()));
        return new ThermalHistory(traces);
    }

    List<Frame> frames() {
        return frames;
    }

    EnergyBalance energy() {
        return new EnergyBalance(through, stored, exchanged);
    }
}
