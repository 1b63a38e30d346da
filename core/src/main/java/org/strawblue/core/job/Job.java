package org.strawblue.core.job;

import java.util.List;
import org.strawblue.core.colour.Light;
import org.strawblue.core.estimate.Finding;

/**
 * A job as read: what is to be made and with what.
 *
 * @param assembly how the parts go together
 * @param light the light colours are judged by
 * @param unknowns everything the file answers with "don't know"
 * @param findings how doubtful words of the file were taken
 */
public record Job(
        String title,
        UnitSystem units,
        Light light,
        List<WorkPiece> parts,
        List<PocketWish> pockets,
        AssemblyWish assembly,
        Shop shop,
        List<Unknown> unknowns,
        List<Finding> findings) {

    public Job {
        parts = List.copyOf(parts);
        pockets = List.copyOf(pockets);
        unknowns = List.copyOf(unknowns);
        findings = List.copyOf(findings);
    }
}
