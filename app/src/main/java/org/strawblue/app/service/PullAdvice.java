package org.strawblue.app.service;

import java.util.Comparator;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.history.Place;
import org.strawblue.core.history.Trace;
import org.strawblue.core.quantity.Band;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Phrase;
import org.strawblue.core.quantity.Quantity;
import org.strawblue.core.quantity.Units;
import org.strawblue.core.watch.PlaceWatch;
import org.strawblue.core.watch.PullWindow;
import org.strawblue.core.watch.QuickAndSlow;
import org.strawblue.core.watch.Reading;
import org.strawblue.core.watch.TemperWatch;

/** Tells when to take a part off, how long there is for it, what being late costs, and what goes on afterwards. */
record PullAdvice(HeatRequest request, Sheet.Builder sheet, HeatHistory history, PlaceNames names) {

    private static final double HOUR = Units.of(Dimension.TIME, "h").toSi(1);

    /** Less than a file or a tester tells [HRC]. */
    private static final double TELLABLE = 0.5;

    void when(PullWindow window, Estimate moment) {
        String how = request.hardened() ? "Into the bath after" : "Take it off after";
        sheet.add("pull", how, moment);
        sheet.add(new Entry.Words("window", "The window", open(window)));
        sheet.add(new Entry.Words("late", "Missed by " + Math.round(window.lateness()) + " s", late(window)));
    }

    /** What the coldest and the hottest place have when it is taken off. */
    void byThen() {
        double off = history.off();
        Comparator<Place> byHeat =
                Comparator.comparingDouble(p -> history.trace(p).at(off));
        Place cold = names.mustBeRight().stream().min(byHeat).orElseThrow();
        Place hot = names.mustBeRight().stream().max(byHeat).orElseThrow();
        sheet.add("then_" + PlaceNames.key(hot), "Its " + names.word(hot) + " then", history.kelvin(hot, off));
        if (hot != cold) {
            sheet.add("then_" + PlaceNames.key(cold), "Its " + names.word(cold) + " then", history.kelvin(cold, off));
        }
    }

    private Phrase open(PullWindow window) {
        if (window.closes().isEmpty()) {
            return Phrase.of(
                    "opens at {} and does not close within {}",
                    Quantity.time(window.opens()),
                    Quantity.time(request.main().seconds()));
        }
        double closes = window.closes().getAsDouble();
        if (closes < window.opens()) {
            return Phrase.of("none: no moment suits every place of it");
        }
        return Phrase.of(
                "{} long: {}",
                Quantity.time(closes - window.opens()),
                Band.between(Dimension.TIME, window.opens(), closes));
    }

    private static Phrase late(PullWindow window) {
        Reading then = hottest(window.atBest()).last();
        Reading late = hottest(window.late()).last();
        double hotter = late.equivalent().kelvin() - then.equivalent().kelvin();
        String colour = late.colour()
                .value()
                .map(c -> "; its colour is then " + c.colour().name().word())
                .orElse("");
        if (then.hardness().value().isEmpty() || late.hardness().value().isEmpty()) {
            return said(hotter, colour);
        }
        double softer = then.hardness().value().get().value()
                - late.hardness().value().get().value();
        if (softer < TELLABLE) {
            return said(hotter, ", no softer than could be told" + colour);
        }
        return Phrase.of(
                "it gets {} hotter and {} softer" + colour,
                Quantity.temperatureDifference(hotter),
                Quantity.hardness(softer));
    }

    private static Phrase said(double hotter, String rest) {
        return Math.round(hotter) == 0
                ? Phrase.of("it gets no hotter by as much as a degree" + rest)
                : Phrase.of("it gets {} hotter" + rest, Quantity.temperatureDifference(hotter));
    }

    private static PlaceWatch hottest(TemperWatch watch) {
        return watch.places().values().stream()
                .max(Comparator.comparingDouble(p -> p.trace().peak()))
                .orElseThrow();
    }

    /** What the part's own heat still does once it is taken off. */
    void carryOver() {
        if (request.after().isEmpty()) {
            return;
        }
        double off = history.off();
        double most = 0;
        Place where = names.read().get(0);
        for (Place place : names.read()) {
            Trace trace = history.trace(place);
            double rise = peakFrom(trace, off) - trace.at(off);
            if (rise > most) {
                most = rise;
                where = place;
            }
        }
        sheet.add(new Entry.Words(
                "carry_over", request.hardened() ? "In the bath" : "After it is taken off", words(most, where)));
    }

    /** The colour that was run up, had it come slowly instead. */
    void slowly(Reading reading) {
        request.steel()
                .ifPresent(steel -> reading.colour()
                        .value()
                        .filter(c -> reading.equivalent().seconds() < HOUR)
                        .flatMap(c -> QuickAndSlow.of(
                                        steel,
                                        c.colour().name(),
                                        request.light(),
                                        request.chromium(),
                                        reading.equivalent().seconds(),
                                        HOUR)
                                .value())
                        .ifPresent(this::slowly));
    }

    private void slowly(QuickAndSlow both) {
        String colour = both.colour().word() + " comes at {} here, at {} in an hour";
        Quantity here = Quantity.temperature(both.quick().kelvin().value());
        Quantity hour = Quantity.temperature(both.slow().kelvin().value());
        sheet.add(new Entry.Words(
                "slowly",
                "Quick or slow",
                both.harder()
                        .map(h -> Phrase.of(
                                colour + "; at the same colour the quick one is {} harder", here, hour, h.band()))
                        .orElseGet(() -> Phrase.of(colour, here, hour))));
    }

    private Phrase words(double rise, Place where) {
        if (Math.round(rise) == 0) {
            return Phrase.of("no place of it gets hotter by as much as a degree");
        }
        return Phrase.of("its " + names.word(where) + " still rises by {}", Quantity.temperatureDifference(rise));
    }

    private static double peakFrom(Trace trace, double seconds) {
        double peak = trace.at(seconds);
        for (int i = 0; i < trace.size(); i++) {
            peak = trace.second(i) > seconds ? Math.max(peak, trace.kelvin(i)) : peak;
        }
        return peak;
    }
}
