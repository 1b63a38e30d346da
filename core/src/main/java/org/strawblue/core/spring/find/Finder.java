package org.strawblue.core.spring.find;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.strawblue.core.estimate.Finding;
import org.strawblue.core.spring.BulkSearch;
import org.strawblue.core.spring.MeasuredSpring;
import org.strawblue.core.spring.Pocket;
import org.strawblue.core.spring.PocketCheck;
import org.strawblue.core.spring.SpringColumns;
import org.strawblue.core.spring.SpringSearch;
import org.strawblue.core.spring.SpringVerdict;

/** Looks through a drawer for everything that may furnish a pocket. */
public final class Finder {

    /** Up to so many springs each gets its reasons; of more, the likeliest so many. */
    private static final int DETAILED = 200;

    private static final int PAIRS = 5;
    private static final int WOUND = 3;

    private static final Comparator<Candidate> ORDER = Comparator.comparing(Candidate::works)
            .thenComparingLong(c -> Math.round(100 * c.probability()))
            .thenComparing(Candidate::kind, Comparator.reverseOrder())
            .thenComparingDouble(Candidate::probability)
            .reversed();

    private Finder() {}

    public static Found find(Pocket pocket, List<MeasuredSpring> drawer) {
        List<Finding> told = PocketCheck.findings(pocket);
        if (told.stream().anyMatch(Finding.Stop.class::isInstance)) {
            return new Found(told, List.of(), List.of(), 0);
        }
        List<MeasuredSpring> detailed = drawer.size() > DETAILED ? likeliest(pocket, drawer) : drawer;
        List<Candidate> all = new ArrayList<>();
        for (SpringVerdict verdict : SpringSearch.rank(pocket, detailed)) {
            all.add(Singles.of(verdict));
            if (!verdict.works()) {
                Shims.of(pocket, verdict).ifPresent(all::add);
            }
        }
        all.addAll(pairs(pocket, detailed));
        boolean any = all.stream().anyMatch(Candidate::works);
        List<Change> changes = any ? List.of() : Changes.of(pocket, detailed);
        all.addAll(WoundDesigns.of(pocket, WOUND));
        all.sort(ORDER);
        return new Found(told, all, changes, drawer.size() - detailed.size());
    }

    /** The smallest changes of a pocket in which nothing works that would let a spring of the drawer work. */
    public static List<Finding> helping(Pocket pocket, List<MeasuredSpring> drawer, int most) {
        return Changes.of(pocket, drawer).stream().limit(most).map(Change::told).toList();
    }

    /** Pairs that work, the best few of each sort, and nests that only their hand forbids. */
    private static List<Candidate> pairs(Pocket pocket, List<MeasuredSpring> drawer) {
        List<Candidate> pairs = Pairs.of(pocket, drawer);
        return Stream.of(Candidate.Kind.NESTED, Candidate.Kind.STACKED)
                .flatMap(kind -> Stream.of(true, false)
                        .flatMap(works -> pairs.stream()
                                .filter(c -> c.kind() == kind && c.works() == works)
                                .limit(PAIRS)))
                .toList();
    }

    private static List<MeasuredSpring> likeliest(Pocket pocket, List<MeasuredSpring> drawer) {
        int[] best = BulkSearch.search(pocket, SpringColumns.of(drawer)).best(DETAILED);
        List<MeasuredSpring> told =
                drawer.stream().filter(s -> s.seen().tells()).limit(DETAILED).toList();
        List<MeasuredSpring> likeliest = new ArrayList<>(told);
        Arrays.stream(best).mapToObj(drawer::get).filter(s -> !told.contains(s)).forEach(likeliest::add);
        return likeliest;
    }
}
