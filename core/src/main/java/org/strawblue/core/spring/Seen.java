package org.strawblue.core.spring;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.strawblue.core.estimate.Estimate;

/**
 * What is known of a spring beyond its sizes: what its owner saw, and what follows from it.
 *
 * @param clues answers by clue, such as magnet: slight
 * @param pushes readings of a push test, none where there was no test
 * @param hand which way it is wound
 * @param lengthBefore its length before it was pressed solid a few times, where that was tried [m]
 * @param wire what it is taken for, once identified; absent where its owner's word alone decides
 * @param rate from sizes and push test together, once identified [N/m]
 */
public record Seen(
        Map<String, String> clues,
        List<PushReading> pushes,
        Optional<Hand> hand,
        Optional<Double> lengthBefore,
        Optional<SpringMaterial> wire,
        Optional<Estimate> rate) {

    private static final Seen NOTHING = of(Map.of(), List.of(), Optional.empty(), Optional.empty());

    public Seen {
        clues = Map.copyOf(clues);
        pushes = List.copyOf(pushes);
    }

    public static Seen of(
            Map<String, String> clues, List<PushReading> pushes, Optional<Hand> hand, Optional<Double> lengthBefore) {
        return new Seen(clues, pushes, hand, lengthBefore, Optional.empty(), Optional.empty());
    }

    public static Seen nothing() {
        return NOTHING;
    }

    /** Whether there is anything from which a wire or a rate may be told. */
    public boolean tells() {
        return !clues.isEmpty() || !pushes.isEmpty();
    }

    public Seen identified(SpringMaterial as, Optional<Estimate> tested) {
        return new Seen(clues, pushes, hand, lengthBefore, Optional.of(as), tested);
    }
}
