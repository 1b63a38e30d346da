package org.strawblue.app.cli;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import org.strawblue.app.service.Sheet;
import org.strawblue.app.service.SpringFamilyService;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.spring.AllowableStress;
import org.strawblue.core.spring.Moduli;
import org.strawblue.core.spring.family.ClickSpring;
import org.strawblue.core.spring.family.DiscSpring;
import org.strawblue.core.spring.family.DiscStack;
import org.strawblue.core.spring.family.ExtensionSpring;
import org.strawblue.core.spring.family.FamilySteel;
import org.strawblue.core.spring.family.TorsionSpring;
import picocli.CommandLine.Option;

/** A spring that is no compression spring of wire, on the command line. */
final class KindOptions {

    @Option(names = "--kind", paramLabel = "KIND", description = "extension, torsion, disc, flat.")
    private @Nullable String kind;

    @Option(
            names = "--tension",
            paramLabel = "FORCE",
            description = "Extension: initial tension; middle of the usual if not told.")
    private @Nullable String tension;

    @Option(names = "--hook", paramLabel = "SIZE", description = "Extension: radius of the hook's loop to mid-wire.")
    private @Nullable String hook;

    @Option(names = "--side", paramLabel = "SIZE", description = "Extension: radius of the bend into the hook.")
    private @Nullable String side;

    @Option(names = "--force", paramLabel = "FORCE", description = "Extension: force it works at.")
    private @Nullable String force;

    @Option(names = "--legs", paramLabel = "SIZE", description = "Torsion: length of both legs together.")
    private @Nullable String legs;

    @Option(names = "--pin", paramLabel = "SIZE", description = "Torsion: pin it lies on.")
    private @Nullable String pin;

    @Option(names = "--moment", paramLabel = "M", description = "Torsion: moment it works at.")
    private @Nullable String moment;

    @Option(names = "--inside", paramLabel = "SIZE", description = "Disc: inside diameter.")
    private @Nullable String inside;

    @Option(names = "--thickness", paramLabel = "SIZE", description = "Disc, flat: thickness.")
    private @Nullable String thickness;

    @Option(
            names = "--cone",
            paramLabel = "SIZE",
            description = "Disc: height of the cone, free height less thickness.")
    private @Nullable String cone;

    @Option(names = "--parallel", paramLabel = "N", description = "Discs the same way round in a pack.")
    private int parallel = 1;

    @Option(names = "--series", paramLabel = "N", description = "Packs against each other.")
    private int series = 1;

    @Option(names = "--length", paramLabel = "SIZE", description = "Flat: free length.")
    private @Nullable String length;

    @Option(names = "--width", paramLabel = "SIZE", description = "Flat: width.")
    private @Nullable String width;

    @Option(names = "--deflection", paramLabel = "SIZE", description = "Disc, flat: how far it is pressed.")
    private @Nullable String deflection;

    boolean given() {
        return kind != null;
    }

    Optional<Sheet> ask(Question question, SpringOptions wire) {
        return switch (String.valueOf(kind).strip().toLowerCase(Locale.ROOT)) {
            case "extension", "tension" -> extension(question, wire);
            case "torsion" -> torsion(question, wire);
            case "disc", "disk", "belleville" -> disc(question, wire);
            case "flat", "click", "leaf" -> flat(question);
            default -> {
                question.problem("--kind", String.valueOf(kind), "extension, torsion, disc or flat", "Choose one.");
                yield Optional.empty();
            }
        };
    }

    private Optional<Sheet> extension(Question q, SpringOptions options) {
        SpringOptions.Coiled c = options.coiled(q);
        double mean = c.outside() - c.wire();
        double loop = q.si("--hook", hook, Dimension.LENGTH).orElse(mean / 2);
        double bend = q.si("--side", side, Dimension.LENGTH).orElse(mean / 4);
        OptionalDouble initial = q.si("--tension", tension, Dimension.FORCE);
        OptionalDouble load = q.si("--force", force, Dimension.FORCE);
        return q.answer(() -> {
            Moduli moduli = c.material().stiffness(c.wire()).moduli();
            double wound = initial.orElse(
                    ExtensionSpring.initialTension(c.wire(), mean).middle());
            return SpringFamilyService.extension(
                    new ExtensionSpring(c.wire(), mean, c.coils(), wound, loop, bend, moduli), load, strength(c));
        });
    }

    private Optional<Sheet> torsion(Question q, SpringOptions options) {
        SpringOptions.Coiled c = options.coiled(q);
        double bending = q.si("--legs", legs, Dimension.LENGTH).orElse(0);
        OptionalDouble load = q.si("--moment", moment, Dimension.MOMENT);
        OptionalDouble on = q.si("--pin", pin, Dimension.LENGTH);
        return q.answer(() -> {
            double tensionModulus = c.material().stiffness(c.wire()).moduli().tension();
            TorsionSpring spring =
                    new TorsionSpring(c.wire(), c.outside() - c.wire(), c.coils(), bending, tensionModulus);
            return SpringFamilyService.torsion(spring, load, on, strength(c));
        });
    }

    private static OptionalDouble strength(SpringOptions.Coiled c) {
        Optional<AllowableStress> bears = c.material().allowable(c.wire());
        return bears.isPresent() ? OptionalDouble.of(bears.get().strength()) : OptionalDouble.empty();
    }

    private Optional<Sheet> disc(Question q, SpringOptions options) {
        double wide = options.outside(q);
        double hole = q.needed("--inside", inside, Dimension.LENGTH);
        double thick = q.needed("--thickness", thickness, Dimension.LENGTH);
        double high = q.needed("--cone", cone, Dimension.LENGTH);
        double travel = q.needed("--deflection", deflection, Dimension.LENGTH);
        if (q.problems().isEmpty() && !(wide > hole && hole > 0 && thick > 0 && parallel > 0 && series > 0)) {
            q.problem("--inside", String.valueOf(inside), "a disc with a hole smaller than it", "Check the sizes.");
        }
        return q.answer(() -> {
            DiscSpring disc = new DiscSpring(wide, hole, thick, high, FamilySteel.tension(), DiscSpring.steelPoisson());
            return SpringFamilyService.disc(
                    new DiscStack(disc, parallel, series), travel, FamilySteel.rubBetween(), FamilySteel.rubAtEdges());
        });
    }

    private Optional<Sheet> flat(Question q) {
        double far = q.needed("--length", length, Dimension.LENGTH);
        double broad = q.needed("--width", width, Dimension.LENGTH);
        double thick = q.needed("--thickness", thickness, Dimension.LENGTH);
        double travel = q.needed("--deflection", deflection, Dimension.LENGTH);
        if (q.problems().isEmpty() && !(far > 0 && broad > 0 && thick > 0)) {
            q.problem("--length", String.valueOf(length), "sizes above 0", "Check the sizes.");
        }
        return q.answer(
                () -> SpringFamilyService.flat(new ClickSpring(far, broad, thick, FamilySteel.tension()), travel));
    }
}
