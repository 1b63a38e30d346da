package org.strawblue.app.proof;

import java.util.Map;
import java.util.OptionalDouble;
import org.strawblue.core.assembly.Blackening;
import org.strawblue.core.assembly.HeatBlue;
import org.strawblue.core.assembly.Lock;
import org.strawblue.core.assembly.Locking;
import org.strawblue.core.assembly.Metal;
import org.strawblue.core.assembly.Strength;
import org.strawblue.core.colour.Light;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.oxide.ColourName;
import org.strawblue.core.part.ScrewThread;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Quantity;

/** Locked screws, temper colours as a finish, black finishes. */
final class AssemblyOperations {

    private static final double ROOM = 293.15;

    private AssemblyOperations() {}

    static Map<String, Operation> all() {
        return Map.of(
                "lock-breaks-loose", in -> torque(locking(in, "thread").breakLoose()),
                "lock-turns-on", in -> torque(locking(in, "thread").runOn()),
                "lock-size-ratio", AssemblyOperations::ratio,
                "lock-size-ratio-by-area", AssemblyOperations::byArea,
                "lock-full-cure",
                        in -> new Result.Number(
                                Quantity.time(locking(in, "thread").fullCure().value())),
                "thread-pitch",
                        in -> new Result.Number(
                                Quantity.length(thread(in, "thread").pitch())),
                "colour-comes-after", AssemblyOperations::comes,
                "black-layer-high",
                        in -> new Result.Number(Quantity.length(Blackening.find(in.text("kind"))
                                .orElseThrow()
                                .layer()
                                .high())));
    }

    private static Locking locking(Inputs in, String name) {
        ScrewThread thread = thread(in, name);
        Lock lock = new Lock(
                thread,
                thread.major(),
                Strength.find(in.text("strength")).orElseThrow(),
                Metal.find("steel").orElseThrow(),
                ROOM,
                OptionalDouble.empty());
        return Locking.of(lock).value().orElseThrow();
    }

    private static ScrewThread thread(Inputs in, String name) {
        return ScrewThread.find(in.text(name)).value().orElseThrow();
    }

    private static Result torque(Estimate torque) {
        return new Result.Number(new Quantity(Dimension.MOMENT, torque.value()));
    }

    private static Result ratio(Inputs in) {
        double one = locking(in, "thread").breakLoose().value();
        return number(locking(in, "other").breakLoose().value() / one);
    }

    /** Control: torque as the square of the diameter, as if the film's area alone counted. */
    private static Result byArea(Inputs in) {
        double share = thread(in, "other").major() / thread(in, "thread").major();
        return number(share * share);
    }

    private static Result comes(Inputs in) {
        ColourName colour = ColourName.find(in.text("colour")).orElseThrow();
        return HeatBlue.at(in.temperature("temperature"), colour, Light.DAYLIGHT, 0)
                .value()
                .map(b -> (Result) new Result.Number(Quantity.time(b.seconds().value())))
                .orElse(Result.word(Result.REFUSED));
    }

    private static Result number(double value) {
        return new Result.Number(Quantity.number(value));
    }
}
