package org.strawblue.app.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.estimate.Finding;
import org.strawblue.core.job.Figure;
import org.strawblue.core.job.Hazard;
import org.strawblue.core.job.Item;
import org.strawblue.core.job.JobCard;
import org.strawblue.core.job.Picture;
import org.strawblue.core.job.Stage;
import org.strawblue.core.job.Step;
import org.strawblue.core.quantity.Band;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Phrase;
import org.strawblue.core.quantity.Quantity;
import org.strawblue.core.source.Basis;
import org.strawblue.core.source.Standing;

/** Cards as full as a real one, to look at and to test the printers with. The numbers are made up. */
public final class SampleCard {

    private static final Basis CURVE = new Basis("tempering curve of O1", "si-brochure", Standing.FITTED);
    private static final Basis GROWTH = new Basis("size change of O1", "from-memory", Standing.FROM_MEMORY);
    private static final Basis OVEN = new Basis("error of a kitchen oven's dial", "assumed", Standing.ASSUMED);
    private static final Basis SPREAD = new Basis("spread of spring wire", "assumed", Standing.ASSUMED);

    private SampleCard() {}

    /** An index pin with its spring: every stage, every picture, notes and cautions. */
    public static JobCard plunger() {
        return new JobCard(
                "Retractable index plunger for the dividing fixture",
                List.of(
                        Phrase.of(
                                "Pin: O1, {}; temper at {} for {}, pale straw by daylight.",
                                hrc(58, 60),
                                celsius(196, 208),
                                Quantity.time(3600)),
                        Phrase.of(
                                "Bush: O1, {}; temper at {} for {}.",
                                hrc(60, 62),
                                celsius(168, 182),
                                Quantity.time(3600)),
                        Phrase.of("Spring: drawer no. 14, as it is; {} at rest.", force(6.2, 7.4))),
                List.of(turn(), harden(), proveHard(), temper(), proveTempered(), finish(), spring(), assemble()),
                List.of(new Finding.Note(
                        Phrase.of("Both parts are of one steel and may be hardened in one heat."),
                        Phrase.of("Their sections differ, {} and {}: soak for the thicker.", mm(8), mm(14)),
                        Phrase.of(""))),
                List.of(
                        Phrase.of(
                                "How far the oven strays is not known; an error of {} is taken, which costs {}. A thermometer in the sand tray would halve it.",
                                Quantity.temperatureDifference(14),
                                hrc(0.5, 1)),
                        Phrase.of("The steel's maker is not known; the grade's usual range of carbon is taken.")),
                List.of(
                        new Item(
                                Phrase.of("Slick melting crayon {}", celsius(204.4)),
                                Phrase.of("to see that the temper has reached its heat; must melt to a smear, not dry"),
                                false),
                        new Item(
                                Phrase.of("Quench oil, {} litres, at {}", Quantity.number(4), celsius(50, 60)),
                                Phrase.of("the pin and the bush"),
                                true),
                        new Item(Phrase.of("A new second-cut file"), Phrase.of("to prove that it hardened"), true),
                        new Item(Phrase.of("Leather gloves, face shield, lid for the oil"), Phrase.of(""), true)));
    }

    /** A job that must not be done as asked. */
    public static JobCard refused() {
        return new JobCard(
                "Pivot pin in mild steel",
                List.of(Phrase.of("Pin: mild steel, asked for {}.", hrc(58, 60))),
                List.of(),
                List.of(new Finding.Stop(
                        Phrase.of("This steel cannot reach {} by heating and quenching.", hrc(58, 60)),
                        Phrase.of(
                                "With {} carbon the hardest it can become is about {}, and that only in a thin section.",
                                Quantity.fraction(0.0018),
                                hrc(38, 44)),
                        Phrase.of(
                                "Make it of O1 or silver steel, or case-harden it: a hard skin of {} on a soft core.",
                                mm(0.3, 0.6)))),
                List.of(),
                List.of());
    }

    /** Texts that no printer may trip over. */
    public static JobCard hostile() {
        String name = "<b>Pin & \"bush\"</b> \u001b[31m ]]> ${x} \u0000 %s 部 \u202e \uD800";
        return new JobCard(
                name + "x".repeat(300),
                List.of(Phrase.of(name)),
                List.of(step(
                        Stage.TURN,
                        name,
                        Phrase.of(name + " {}", celsius(200)),
                        List.of(new Figure(name.repeat(3), estimate(Dimension.LENGTH, 1e-9, 0, 1e9))),
                        List.of(Phrase.of(name)),
                        List.of(new Hazard("k", name)),
                        List.of(),
                        List.of())),
                List.of(),
                List.of(),
                List.of());
    }

    private static Step turn() {
        return step(
                Stage.TURN,
                "pin",
                Phrase.of("Turn to {}: leave {} on the diameter for finishing.", mm(8.11, 8.13), mm(0.11, 0.13)),
                List.of(
                        new Figure("growth in hardening", estimate(Dimension.LENGTH, 6e-6, -4e-6, 16e-6, GROWTH)),
                        new Figure(
                                "scale and skin to remove, each side",
                                estimate(Dimension.LENGTH, 40e-6, 25e-6, 60e-6, GROWTH))),
                List.of(Phrase.of("The allowance covers growth at its least and decarburised skin at its most.")),
                List.of(),
                List.of(new Finding.Note(
                        Phrase.of("Ream the cross hole to size before hardening."),
                        Phrase.of("It is too small to lap, and will close by no more than {}.", mm(0.004)),
                        Phrase.of("Leave the reamer's upper limit."))),
                List.of());
    }

    private static Step harden() {
        return step(
                Stage.HARDEN,
                "pin",
                Phrase.of(
                        "Soak at {} for {}, then quench in warm oil within {}.",
                        celsius(790, 815),
                        minutes(10, 14),
                        Quantity.time(4)),
                List.of(
                        new Figure(
                                "heat-through before the soak counts", estimate(Dimension.TIME, 420, 300, 600, OVEN)),
                        new Figure("hardness as quenched", estimate(Dimension.HARDNESS, 64.2, 63, 65.4, CURVE)),
                        new Figure("austenite left over", estimate(Dimension.FRACTION, 0.08, 0.05, 0.12, CURVE)),
                        new Figure("hardens through up to", estimate(Dimension.LENGTH, 0.055, 0.045, 0.065, GROWTH))),
                List.of(
                        Phrase.of("The section of {} is far below what this quench hardens through.", mm(8)),
                        Phrase.of(
                                "By eye: past the magnet's loss at {} by a clear step, dull cherry in a dim shop; the eye is good to about {}.",
                                celsius(743),
                                Quantity.temperatureDifference(30))),
                List.of(
                        new Hazard(
                                "oil",
                                "Hot oil can flash. Quench outdoors or under an open door, steel tank with a tight lid at hand, no water near, never a plastic vessel. Enter swiftly and keep the tongs clear of the surface."),
                        new Hazard(
                                "eyes",
                                "Face shield and leather gloves. A part cracked in the quench can throw splinters.")),
                List.of(new Finding.Caution(
                        Phrase.of("A sharp inner corner at the shoulder may crack."),
                        Phrase.of("Thick and thin cool apart; the corner takes the difference."),
                        Phrase.of("Leave a radius of {} or more, and wrap the thread in wire.", mm(0.5)))),
                List.of());
    }

    private static Step proveHard() {
        return step(
                Stage.PROVE_HARD,
                "pin",
                Phrase.of("Draw a new file over the end: it must skate, leaving no scratch."),
                List.of(),
                List.of(Phrase.of("A file bites below about {}.", new Quantity(Dimension.HARDNESS, 60))),
                List.of(),
                List.of(),
                List.of());
    }

    private static Step temper() {
        return step(
                Stage.TEMPER,
                "pin",
                Phrase.of(
                        "Hold in the oven at {} for {}: pale straw on a bright patch.",
                        celsius(196, 208),
                        Quantity.time(3600)),
                List.of(
                        new Figure(
                                "hardness after tempering",
                                estimate(Dimension.HARDNESS, 59.1, 57.9, 60.3, CURVE, OVEN)),
                        new Figure("temperature of the part", estimate(Dimension.TEMPERATURE, 475.2, 467, 483, OVEN)),
                        new Figure("film of oxide", estimate(Dimension.LENGTH, 38e-9, 31e-9, 46e-9, CURVE)),
                        new Figure("the same temper in 20 min", estimate(Dimension.TEMPERATURE, 487, 480, 495, CURVE))),
                List.of(
                        Phrase.of(
                                "The colour comes at a lower temperature with longer time: a chart for a few minutes would mislead you by {}.",
                                Quantity.temperatureDifference(18)),
                        Phrase.of("Start the clock when the part, not the air, has reached {}.", celsius(196))),
                List.of(
                        new Hazard(
                                "fumes",
                                "Wipe off all oil first: it smokes, and may catch fire in an oven. Not an oven that is used for food on the same day.")),
                List.of(new Finding.Note(
                        Phrase.of("An infrared gun set to 0.95 reads {} on the bright patch.", celsius(70, 110)),
                        Phrase.of("Bright steel sends out little; the gun sees the room in it."),
                        Phrase.of("Aim at a patch painted with stove black."))),
                List.of(ribbon(), curve()));
    }

    private static Step proveTempered() {
        return step(
                Stage.PROVE_TEMPERED,
                "pin",
                Phrase.of("The file must now just begin to bite, and the patch must be pale straw."),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of());
    }

    private static Step finish() {
        return step(
                Stage.FINISH,
                "pin",
                Phrase.of("Lap to {} for a sliding fit in the bush.", mm(7.991, 7.997)),
                List.of(new Figure("clearance in the bush", estimate(Dimension.LENGTH, 10e-6, 6e-6, 14e-6))),
                List.of(),
                List.of(),
                List.of(),
                List.of());
    }

    private static Step spring() {
        return step(
                Stage.SPRING,
                "",
                Phrase.of("Take spring no. 14 from the drawer as it is."),
                List.of(
                        new Figure("rate", estimate(Dimension.STIFFNESS, 1180, 1050, 1320, SPREAD)),
                        new Figure("force at rest", estimate(Dimension.FORCE, 6.8, 5.9, 7.7, SPREAD)),
                        new Figure("force at full travel", estimate(Dimension.FORCE, 16.3, 14.6, 18.2, SPREAD)),
                        new Figure(
                                "highest stress, of what the wire bears",
                                estimate(Dimension.FRACTION, 0.56, 0.5, 0.63, SPREAD)),
                        new Figure(
                                "room in the bore at full travel",
                                estimate(Dimension.LENGTH, 0.00045, 0.0004, 0.0005))),
                List.of(Phrase.of(
                        "No. 9 binds in the bore by {}; no. 11 goes solid {} before full travel.", mm(0.2), mm(1.4))),
                List.of(new Hazard(
                        "spring", "A compressed spring jumps. Cover it with a hand when you take the pin out.")),
                List.of(),
                List.of(inPocket(), forces()));
    }

    private static Step assemble() {
        return step(
                Stage.ASSEMBLE,
                "",
                Phrase.of("Oil lightly, assemble, and work it {} times.", Quantity.number(20)),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of());
    }

    static Picture.ColourRibbon ribbon() {
        String[] names = {
            "bare", "faint yellow", "pale straw", "straw", "dark straw", "brown", "purple", "blue", "pale blue", "grey"
        };
        String[] colours = {
            "#cfcfcb", "#d8d0b0", "#d9c489", "#cfab5c", "#b98a45", "#94603f", "#6d4566", "#3c4f86", "#6a8aa6", "#8d9599"
        };
        List<Picture.Swatch> swatches = new ArrayList<>();
        for (int i = 0; i < 70; i++) {
            int k = Math.min(names.length - 1, i / 7);
            swatches.add(new Picture.Swatch(
                    433.15 + 2 * i, names[k], blend(colours[k], colours[Math.min(k + 1, 9)], i % 7 / 7.0)));
        }
        return new Picture.ColourRibbon(
                Phrase.of("Temper colours of O1 held {}", Quantity.time(3600)),
                swatches,
                celsius(196, 208),
                3600,
                "daylight");
    }

    private static String blend(String from, String to, double share) {
        StringBuilder hex = new StringBuilder("#");
        for (int i = 1; i < 7; i += 2) {
            int a = Integer.parseInt(from.substring(i, i + 2), 16);
            int b = Integer.parseInt(to.substring(i, i + 2), 16);
            hex.append(String.format(java.util.Locale.ROOT, "%02x", Math.round(a + (b - a) * share)));
        }
        return hex.toString();
    }

    static Picture.HardnessCurve curve() {
        List<Picture.CurvePoint> points = new ArrayList<>();
        for (double celsius = 100; celsius <= 500; celsius += 10) {
            double hrc = 64.5 - 6.5 * (celsius - 100) / 150 - Math.max(0, celsius - 250) * 0.012;
            points.add(new Picture.CurvePoint(celsius + 273.15, hrc, hrc - 1.2, hrc + 1.2));
        }
        return new Picture.HardnessCurve(
                Phrase.of("Hardness of O1 after {}", Quantity.time(3600)),
                points,
                Optional.of(hrc(58, 60)),
                Optional.of(celsius(196, 208)),
                3600);
    }

    static Picture.SpringInPocket inPocket() {
        return new Picture.SpringInPocket(
                Phrase.of("Spring no. 14 in its pocket"),
                0.0009,
                0.0075,
                9.5,
                true,
                true,
                0.0285,
                0.0227,
                0.0147,
                0.0086,
                0.00755,
                0.008,
                0.005);
    }

    static Picture.ForceLength forces() {
        return new Picture.ForceLength(
                Phrase.of("Force of spring no. 14"),
                0.0285,
                0.0086,
                1180,
                1050,
                1320,
                0.0227,
                0.0147,
                Optional.of(force(5, 8)),
                Optional.of(force(14, 18)),
                26);
    }

    private static Step step(
            Stage stage,
            String part,
            Phrase lead,
            List<Figure> figures,
            List<Phrase> reasons,
            List<Hazard> hazards,
            List<Finding> findings,
            List<Picture> pictures) {
        Phrase next = Phrase.of("Temper as soon as it can be held in the hand, within {}.", Quantity.time(3600));
        List<Phrase> then = stage == Stage.HARDEN ? List.of(next) : List.of();
        return new Step(stage, part, lead, then, figures, reasons, hazards, findings, pictures);
    }

    private static Estimate estimate(Dimension dimension, double value, double low, double high, Basis... bases) {
        return Estimate.of(dimension, value, low, high, bases);
    }

    private static Band hrc(double low, double high) {
        return new Band(Dimension.HARDNESS, low, high);
    }

    private static Band celsius(double low, double high) {
        return new Band(Dimension.TEMPERATURE, low + 273.15, high + 273.15);
    }

    private static Quantity celsius(double value) {
        return Quantity.temperature(value + 273.15);
    }

    private static Band minutes(double low, double high) {
        return new Band(Dimension.TIME, low * 60, high * 60);
    }

    private static Band force(double low, double high) {
        return new Band(Dimension.FORCE, low, high);
    }

    private static Band mm(double low, double high) {
        return new Band(Dimension.LENGTH, low / 1000, high / 1000);
    }

    private static Quantity mm(double value) {
        return Quantity.length(value / 1000);
    }
}
