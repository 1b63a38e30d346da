package org.strawblue.app.service;

import java.util.List;
import java.util.Optional;
import org.strawblue.core.assembly.Blackening;
import org.strawblue.core.assembly.HeatBlue;
import org.strawblue.core.assembly.Lock;
import org.strawblue.core.assembly.Locking;
import org.strawblue.core.assembly.Oil;
import org.strawblue.core.assembly.Removal;
import org.strawblue.core.assembly.Slide;
import org.strawblue.core.colour.Light;
import org.strawblue.core.estimate.Answer;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.oxide.ColourName;
import org.strawblue.core.quantity.Band;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Phrase;
import org.strawblue.core.quantity.Quantity;
import org.strawblue.core.steel.Steel;
import org.strawblue.core.steel.Temper;
import org.strawblue.core.steel.Tempering;

/** Questions about putting a small mechanism together. */
public final class AssembleService {

    private AssembleService() {}

    /**
     * A colour as a finish.
     *
     * @param kelvin wanted temperature [K], or else
     * @param seconds wanted time [s]
     */
    public record Blue(
            ColourName colour, Optional<Double> kelvin, Optional<Double> seconds, Light light, double chromium) {

        Answer<HeatBlue> asked(double usual) {
            return kelvin.map(t -> HeatBlue.at(t, colour, light, chromium))
                    .orElseGet(() -> HeatBlue.in(seconds.orElse(usual), colour, light, chromium));
        }
    }

    /** Everything that was asked; what is absent was not. */
    public record Asked(
            Optional<Lock> lock,
            Optional<Slide> slide,
            Optional<Steel> steel,
            Optional<Temper> temper,
            Optional<Blue> blue,
            Optional<Blackening> blackening) {}

    public static Sheet assemble(Asked asked) {
        Sheet.Builder sheet = Sheet.titled("Putting it together");
        asked.lock().ifPresent(l -> lock(sheet, asked, l));
        asked.blue().ifPresent(b -> blue(sheet, asked, b));
        asked.blackening().ifPresent(b -> black(sheet, asked, b));
        asked.slide().ifPresent(s -> oil(sheet, s));
        return sheet.build();
    }

    private static void lock(Sheet.Builder sheet, Asked asked, Lock lock) {
        Answer<Locking> answer = Locking.of(lock);
        sheet.add(new Entry.Words(
                "lock",
                "Lock",
                Phrase.of(
                        lock.thread().name() + " over {}, " + lock.strength().name() + " strength, comes off "
                                + lock.strength().removed(),
                        Quantity.length(lock.engaged()))));
        answer.value()
                .ifPresent(l -> sheet.add("drops", "Fluid, in drops", l.drops())
                        .add("handle_after", "May be handled after", l.fixture())
                        .add("full_strength_after", "Full strength after", l.fullCure())
                        .add("breaks_loose_at", "Breaks loose at", l.breakLoose())
                        .add("turns_on_at", "Turns on at", l.runOn())
                        .add("screw_yields_at", "The screw yields at", l.twistsOff()));
        sheet.findings(answer.findings());
        asked.slide().ifPresent(s -> sheet.findings(s.besideLocking()));
        if (lock.strength().hot()) {
            removal(sheet, asked);
        }
    }

    private static void removal(Sheet.Builder sheet, Asked asked) {
        if (asked.steel().isEmpty() || asked.temper().isEmpty()) {
            sheet.findings(Removal.fumes());
            return;
        }
        Answer<Removal> removal = Removal.of(asked.steel().get(), asked.temper().get());
        removal.value()
                .ifPresent(r -> sheet.add("hardness", "Hardness as tempered", r.before())
                        .add("hardness_after_gentle_removal", "Heated loose, gently", r.gently())
                        .add("hardness_after_harsh_removal", "Heated loose, harshly", r.harshly()));
        sheet.findings(removal.findings());
    }

    private static void blue(Sheet.Builder sheet, Asked asked, Blue wish) {
        Answer<HeatBlue> answer = wish.asked(ColourService.CHART_SECONDS);
        answer.value().ifPresent(b -> {
            sheet.add(new Entry.Colour(
                            "colour", "Finish", b.colour().word(), b.look().hex()))
                    .add(new Entry.Given("at", "Hold the metal at", Quantity.temperature(b.kelvin())))
                    .add("seconds", "Best after", b.seconds())
                    .add(new Entry.Limits("stays", "If that is right it stays from", time(b.from(), b.until())));
            b.grey().ifPresent(g -> sheet.add("grey_after", "Gone grey after", g));
            b.greyKelvin()
                    .ifPresent(k -> sheet.add(new Entry.Given(
                            "grey_margin", "Grey in that time if hotter by", Quantity.temperatureDifference(k))));
            sheet.add(new Entry.Given("pair", "Two pieces alike within", Quantity.temperatureDifference(b.apart())));
            softened(sheet, asked, b);
        });
        sheet.findings(answer.findings());
    }

    private static Band time(double from, double until) {
        return new Band(Dimension.TIME, from, until);
    }

    /** What the heat of the colour leaves of the hardness. */
    private static void softened(Sheet.Builder sheet, Asked asked, HeatBlue blue) {
        asked.steel().ifPresent(steel -> {
            Temper heat = new Temper(blue.kelvin(), blue.seconds().value());
            List<Temper> all = asked.temper().map(t -> List.of(t, heat)).orElse(List.of(heat));
            Answer<Estimate> hardness = Tempering.hardness(steel, all);
            hardness.value().ifPresent(h -> sheet.add("hardness_blued", "Hardness when so coloured", h));
            sheet.findings(hardness.findings());
        });
    }

    private static void black(Sheet.Builder sheet, Asked asked, Blackening finish) {
        sheet.add(new Entry.Words("black", "Black", Phrase.of(finish.name())))
                .add("layer", "Layer", finish.layer())
                .add("on_diameter", "Adds to a diameter", finish.onDiameter())
                .add(new Entry.Limits("bath", "Bath", finish.bath()));
        asked.slide().ifPresent(s -> sheet.add(left(s, finish)));
        sheet.findings(finish.findings(asked.temper().map(Temper::kelvin)));
    }

    /** Both parts black. */
    private static Entry left(Slide slide, Blackening finish) {
        Band c = slide.clearance();
        double most = 2 * finish.onDiameter().high();
        double least = 2 * finish.onDiameter().low();
        return new Entry.Limits(
                "clearance_black",
                "Clearance, both black",
                new Band(Dimension.LENGTH, c.low() - most, c.high() - least));
    }

    private static void oil(Sheet.Builder sheet, Slide slide) {
        Oil oil = slide.oil();
        sheet.add(new Entry.Words("oil", "Oil the slide with", Phrase.of(oil.name() + ": " + oil.why())));
    }
}
