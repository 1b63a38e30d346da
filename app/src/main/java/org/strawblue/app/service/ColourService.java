package org.strawblue.app.service;

import org.strawblue.core.colour.Light;
import org.strawblue.core.estimate.Answer;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.estimate.Finding;
import org.strawblue.core.history.Trace;
import org.strawblue.core.oxide.ColourName;
import org.strawblue.core.oxide.ColourReading;
import org.strawblue.core.oxide.FilmColour;
import org.strawblue.core.oxide.FilmColours;
import org.strawblue.core.quantity.Phrase;
import org.strawblue.core.quantity.Quantity;

/** Questions about temper colours. */
public final class ColourService {

    /** The time taken where none is given [s]: that of the trade's usual chart. */
    public static final double CHART_SECONDS = FilmColours.standard().chartSeconds();

    /** Says that the time was not given. */
    public static Finding chartTime() {
        return new Finding.Note(
                Phrase.of(
                        "No time was given: the {} of the trade's usual chart are taken.",
                        Quantity.time(CHART_SECONDS)),
                Phrase.of("The same colour comes at a lower temperature in a longer time."),
                Phrase.of("Give the time at temperature."));
    }

    private ColourService() {}

    /** The colour this heat leaves. @param chromium of the steel [mass %] */
    public static Answer<ColourReading> reading(double kelvin, double seconds, Light light, double chromium) {
        return FilmColours.standard().after(Trace.hold(kelvin, seconds), light, chromium);
    }

    /** What colour does this heat leave? */
    public static Sheet after(double kelvin, double seconds, Light light, double chromium) {
        Answer<ColourReading> answer = reading(kelvin, seconds, light, chromium);
        Sheet.Builder sheet = Sheet.titled("Colour after a heat")
                .add(new Entry.Given("temperature", "Temperature of the metal", Quantity.temperature(kelvin)))
                .add(new Entry.Given("time", "Time at temperature", Quantity.time(seconds)))
                .add(new Entry.Words("light", "Seen in", Phrase.of(light.word())));
        answer.value().ifPresent(r -> show(sheet, r));
        return sheet.findings(answer.findings()).build();
    }

    private static void show(Sheet.Builder sheet, ColourReading reading) {
        sheet.add(entry("colour", "Colour", reading.colour()))
                .add(entry("colour_low", "or, if the film grew slower", reading.thinner()))
                .add(entry("colour_high", "or, if it grew faster", reading.thicker()))
                .add("thickness", "Film", reading.thickness());
        reading.rivals().forEach(r -> sheet.add(entry("by " + r.law(), "By " + r.law(), r.colour())));
    }

    private static Entry entry(String key, String label, FilmColour colour) {
        return new Entry.Colour(key, label, colour.name().word(), colour.hex());
    }

    /** How hot was it, to show this colour after this time? */
    public static Sheet temperature(ColourName name, double seconds, Light light, double chromium) {
        Answer<Estimate> answer = FilmColours.standard().temperatureFor(name, seconds, light, chromium);
        Sheet.Builder sheet = Sheet.titled("Temperature that leaves a colour")
                .add(new Entry.Words("colour", "Colour", Phrase.of(name.word())))
                .add(new Entry.Given("time", "Time at temperature", Quantity.time(seconds)))
                .add(new Entry.Words("light", "Seen in", Phrase.of(light.word())));
        answer.value().ifPresent(e -> sheet.add("temperature", "Temperature of the metal", e));
        return sheet.findings(answer.findings()).build();
    }
}
