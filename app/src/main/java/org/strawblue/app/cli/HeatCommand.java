package org.strawblue.app.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import org.strawblue.app.report.Screen;
import org.strawblue.app.service.HeatService;
import org.strawblue.app.service.Sheet;
import org.strawblue.core.colour.Light;
import org.strawblue.core.evidence.sample.Settings;
import org.strawblue.core.heat.HeatThrough;
import org.strawblue.core.heat.course.Course;
import org.strawblue.core.heat.course.Setting;
import org.strawblue.core.heat.course.Spell;
import org.strawblue.core.part.PartShape;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.steel.Grade;
import org.strawblue.core.steel.Steel;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** A part on a heat source: what it really has, minute by minute. */
@Command(
        name = "heat",
        mixinStandardHelpOptions = true,
        addMethodSubcommands = false,
        description = {
            "What a part really has on a hot plate, in an oven, a kiln, a flame, sand or a bath: temperature at its places"
                    + " with time, when it has come through, and, with --grade, hardness and colour at the end."
        },
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {"0:answered", "1:refused: outside what is known, with the reason", "2:bad input"},
        footer = {
            "",
            "Examples:",
            "  strawblue heat --diameter 12mm --length 60mm --on \"hot plate\" --at 290C --for 12min --grade W1",
            "      a bar on a bare plate; add --cover for a lid or blanket over it",
            "  strawblue heat --diameter 1/2in --on \"kitchen oven\" --at 450F --for 1h --surface oxidised",
            "  strawblue heat --thickness 3mm --width 20mm --on oil --start 800C --for 20s"
        })
final class HeatCommand extends Answering {

    @Mixin
    private ShapeOptions shape;

    @Mixin
    private SteelOptions steel;

    @Option(
            names = "--on",
            paramLabel = "WHAT",
            description = "Hot plate, kitchen oven, kiln, torch, sand tray, a quench, air.")
    private @Nullable String on;

    @Option(names = "--at", paramLabel = "T", description = "What it is at: the plate under the part, the oven's mean.")
    private @Nullable String at;

    @Option(names = "--for", paramLabel = "t", description = "How long.")
    private @Nullable String time;

    @Option(names = "--cover", description = "Part and plate are covered.")
    private boolean cover;

    @Option(
            names = "--gap",
            paramLabel = "SIZE",
            description = "Air under the part where it is nearest; 20 um if not told.")
    private @Nullable String gap;

    @Option(names = "--surface", paramLabel = "WORD", description = "bright (if not told) or oxidised.")
    private @Nullable String surface;

    @Option(names = "--start", paramLabel = "T", description = "What the part has at first; the room's if not told.")
    private @Nullable String start;

    @Option(names = "--then-air", paramLabel = "t", description = "Lifted into still air for so long afterwards.")
    private @Nullable String air;

    HeatCommand(Screen screen) {
        super(screen);
    }

    @Override
    Optional<Sheet> ask(Question question) {
        Optional<PartShape> part = shape.shape(question);
        double seconds = question.needed("--for", time, Dimension.TIME);
        OptionalDouble kelvin = question.si("--at", at, Dimension.TEMPERATURE);
        OptionalDouble nearest = question.si("--gap", gap, Dimension.LENGTH);
        double first = question.si("--start", start, Dimension.TEMPERATURE).orElse(Settings.room());
        double after = question.si("--then-air", air, Dimension.TIME).orElse(0);
        HeatThrough.Surface finish = finish(question);
        positive(question, "--for", time, seconds);
        positive(question, "--gap", gap, nearest.orElse(1));
        Optional<Setting> setting =
                setting(question, new Settings.Stated(kelvin, nearest, Settings.emissivity(finish), cover));
        Optional<Steel> known = steel.grade(question)
                .map(Grade::name)
                .map(Steel::ofGrade)
                .map(s -> steel.grade(question)
                        .map(Grade::composition)
                        .map(s::with)
                        .orElse(s));
        double chromium = steel.chromium(question);
        return question.answer(() -> {
            List<Spell> spells = new ArrayList<>(List.of(new Spell(setting.orElseThrow(), seconds)));
            if (after > 0) {
                spells.add(new Spell(Settings.air(Settings.emissivity(finish)), after));
            }
            return HeatService.heat(new Course(part.orElseThrow(), first, spells), known, Light.DAYLIGHT, chromium);
        });
    }

    private static void positive(Question question, String option, @Nullable String text, double value) {
        if (text != null && question.problems().isEmpty() && !(value > 0)) {
            question.problem(option, text, "more than 0", "Give a size or a time that can be.");
        }
    }

    private HeatThrough.Surface finish(Question question) {
        String word = surface == null ? "bright" : surface.strip().toLowerCase(Locale.ROOT);
        boolean dark = List.of("oxidised", "oxidized", "black", "scaled").contains(word);
        if (!dark && !word.equals("bright") && surface != null) {
            question.problem("--surface", surface, "bright or oxidised", "Choose one of these.");
        }
        return dark ? HeatThrough.Surface.OXIDISED : HeatThrough.Surface.BRIGHT;
    }

    private Optional<Setting> setting(Question question, Settings.Stated stated) {
        if (on == null) {
            question.missing("--on", null, "a heat source, a quench, or air");
        }
        return question.problems().isEmpty()
                ? question.named("--on", on, word -> Settings.named(word, stated))
                : Optional.empty();
    }
}
