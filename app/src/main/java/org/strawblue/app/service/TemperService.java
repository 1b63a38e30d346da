package org.strawblue.app.service;

import java.util.Collections;
import org.strawblue.core.estimate.Answer;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.quantity.Band;
import org.strawblue.core.quantity.Quantity;
import org.strawblue.core.steel.Steel;
import org.strawblue.core.steel.Temper;
import org.strawblue.core.steel.TemperChoice;
import org.strawblue.core.steel.Tempering;

/** Questions about tempering. */
public final class TemperService {

    private TemperService() {}

    /** How hard is it after this temper, given so many times? */
    public static Sheet hardness(Steel steel, Temper temper, int times) {
        Answer<Estimate> answer = Tempering.hardness(steel, Collections.nCopies(times, temper));
        Sheet.Builder sheet = given("Hardness after tempering", temper);
        answer.value().ifPresent(e -> sheet.add("hardness", "Hardness", e));
        return sheet.findings(answer.findings()).build();
    }

    /** At what temperature, for a wanted hardness? */
    public static Sheet temperature(Steel steel, Band wanted, double seconds) {
        Answer<TemperChoice> answer = Tempering.temperature(steel, wanted, seconds);
        Sheet.Builder sheet = Sheet.titled("Tempering temperature for a wanted hardness")
                .add(new Entry.Limits("wanted", "Wanted", wanted))
                .add(new Entry.Given("time", "Time at temperature", Quantity.time(seconds)));
        answer.value().ifPresent(choice -> choice(sheet, choice));
        return sheet.findings(answer.findings()).build();
    }

    private static void choice(Sheet.Builder sheet, TemperChoice choice) {
        sheet.add("temperature", "Aim for", choice.aim())
                .add(new Entry.Limits("window", "Expected in the band from", choice.window()))
                .add("hardness", "Hardness to expect", choice.hardness())
                .add(new Entry.Given("chance", "Chance to end in the band", Quantity.fraction(choice.inBand())));
    }

    /** How long at another temperature for the same effect? */
    public static Sheet sameAt(Steel steel, Temper temper, double kelvin) {
        Answer<Estimate> answer = Tempering.equivalentTime(steel, temper, kelvin);
        Sheet.Builder sheet = given("The same temper at another temperature", temper)
                .add(new Entry.Given("other_temperature", "Instead at", Quantity.temperature(kelvin)));
        answer.value().ifPresent(e -> sheet.add("other_time", "For", e));
        return sheet.findings(answer.findings()).build();
    }

    /** How hot for another time and the same effect? */
    public static Sheet sameIn(Steel steel, Temper temper, double seconds) {
        Answer<Estimate> answer = Tempering.equivalentTemperature(steel, temper, seconds);
        Sheet.Builder sheet = given("The same temper in another time", temper)
                .add(new Entry.Given("other_time", "Instead for", Quantity.time(seconds)));
        answer.value().ifPresent(e -> sheet.add("other_temperature", "At", e));
        return sheet.findings(answer.findings()).build();
    }

    private static Sheet.Builder given(String title, Temper temper) {
        return Sheet.titled(title)
                .add(new Entry.Given("temperature", "Temperature of the metal", Quantity.temperature(temper.kelvin())))
                .add(new Entry.Given("time", "Time at temperature", Quantity.time(temper.seconds())));
    }
}
