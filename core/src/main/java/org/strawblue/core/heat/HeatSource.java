package org.strawblue.core.heat;

import java.util.Optional;
import java.util.OptionalDouble;

/** What heats the part. What is usual of its kind lies in {@code heat-sources.csv}; what the shop has measured replaces it. */
public sealed interface HeatSource {

    Traits traits();

    /** The same source, with its traits replaced by better-known ones. */
    HeatSource with(Traits better);

    default String name() {
        return traits().name();
    }

    /** Temperature [K] of a gas that heats by blowing on the part; absent where walls at the source's own heat do. */
    default OptionalDouble gas() {
        return OptionalDouble.empty();
    }

    /** Length [m] of a part that is heated evenly; absent where all of it is. */
    default Optional<Double> evenLength() {
        return Optional.empty();
    }

    /** A plate the part lies on. */
    record HotPlate(Traits traits) implements HeatSource {
        @Override
        public HeatSource with(Traits better) {
            return new HotPlate(better);
        }
    }

    /** A kitchen, fan or toaster oven. */
    record Oven(Traits traits) implements HeatSource {
        @Override
        public HeatSource with(Traits better) {
            return new Oven(better);
        }
    }

    /** An electric kiln or muffle furnace. */
    record Kiln(Traits traits) implements HeatSource {
        @Override
        public HeatSource with(Traits better) {
            return new Kiln(better);
        }
    }

    /**
     * A flame in the hand.
     *
     * @param gasKelvin temperature of the flame gas [K]
     * @param covers length of a part it heats evenly [m]
     * @param wraps section up to which the flame laps all round a part; 0 where it heats alike whatever the section [m]
     */
    record Torch(Traits traits, double gasKelvin, double covers, double wraps) implements HeatSource {
        @Override
        public HeatSource with(Traits better) {
            return new Torch(better, gasKelvin, covers, wraps);
        }

        @Override
        public OptionalDouble gas() {
            return OptionalDouble.of(gasKelvin);
        }

        @Override
        public Optional<Double> evenLength() {
            return Optional.of(covers);
        }
    }

    /** A gas or coal forge. */
    record Forge(Traits traits) implements HeatSource {
        @Override
        public HeatSource with(Traits better) {
            return new Forge(better);
        }
    }

    /** A tray of sand or brass chips over a burner or plate. */
    record SandTray(Traits traits) implements HeatSource {
        @Override
        public HeatSource with(Traits better) {
            return new SandTray(better);
        }
    }
}
