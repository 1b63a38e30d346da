package org.strawblue.core.steel;

import java.util.List;
import java.util.Optional;
import org.strawblue.core.estimate.Answer;
import org.strawblue.core.estimate.Estimate;

/** How hard a tool should be for what it has to do. */
public final class Duties {

    private Duties() {}

    /** The duty people call {@code name}, in UK or US words. */
    public static Optional<Duty> find(String name) {
        throw new UnsupportedOperationException();
    }

    public static List<Duty> all() {
        throw new UnsupportedOperationException();
    }

    /** The hardness wanted [HRC] for a duty of a part made of this grade: middle and limits of what is usual. */
    public static Answer<Estimate> hardness(Duty duty, String grade) {
        throw new UnsupportedOperationException();
    }
}
