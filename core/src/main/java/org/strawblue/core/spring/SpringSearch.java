package org.strawblue.core.spring;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.strawblue.core.estimate.Finding;

/** Which springs of a drawer work in a pocket, as they are or cut down. */
public final class SpringSearch {

    private SpringSearch() {}

    /** The first of those that work, as they are or cut; absent where none does. */
    public static Optional<MeasuredSpring> firstThatWorks(Pocket pocket, List<MeasuredSpring> drawer) {
        for (MeasuredSpring spring : drawer) {
            if (new SpringTrial(pocket, spring).roughChance() >= 0) {
                return Optional.of(spring);
            }
        }
        return Optional.empty();
    }

    /** What to mind about a spring in a pocket where it may well work. */
    public static List<Finding> cautions(CompressionSpring spring, Pocket pocket) {
        return spring.allowable()
                .map(a -> SpringCautions.of(spring, pocket, Duty.of(pocket, spring.moduli(), a)))
                .orElse(List.of());
    }

    /** Whether a spring keeps every limit as it is, each measurement taken as exact. */
    public static boolean worksAsItIs(CompressionSpring spring, Pocket pocket) {
        Coil coil = spring.nominal();
        return coil.active() > 0
                && coil.pitch() >= coil.wire()
                && pocket.temperature().orElse(0) <= spring.material().hottest()
                && spring.allowable()
                        .map(a -> Margins.of(coil, Duty.of(pocket, spring.moduli(), a))
                                .kept())
                        .orElse(false);
    }

    /** The chance that a spring works as it is, whatever its figures say when taken as exact [1]. */
    public static double chance(CompressionSpring spring, Pocket pocket, boolean rough) {
        return spring.allowable()
                .map(a -> (rough ? WorkingProbability.coarse() : WorkingProbability.fine())
                        .of(spring.inputs(), spring.cut(), Duty.of(pocket, spring.moduli(), a)))
                .orElse(0.0);
    }

    /**
     * Every spring, the likeliest to work first. Among springs that differ by less than one chance in a
     * hundred the one that needs no cutting comes first.
     */
    public static List<SpringVerdict> rank(Pocket pocket, List<MeasuredSpring> drawer) {
        return drawer.stream()
                .map(spring -> new SpringTrial(pocket, spring).judge())
                .sorted(Comparator.comparing(SpringVerdict::works)
                        .thenComparingLong(v -> Math.round(100 * v.probability()))
                        .thenComparing(v -> v.spring().cut().isEmpty())
                        .thenComparingDouble(SpringVerdict::probability)
                        .reversed())
                .toList();
    }
}
