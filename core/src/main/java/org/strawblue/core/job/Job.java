package org.strawblue.core.job;

import java.util.List;

/**
 * A job as read: what is to be made and with what.
 *
 * @param light the light colours are judged by: "daylight", "lamp", "led"
 * @param unknowns everything the file answers with "don't know"
 */
public record Job(
        String title,
        UnitSystem units,
        String light,
        List<WorkPiece> parts,
        List<PocketWish> pockets,
        Shop shop,
        List<Unknown> unknowns) {

    public Job {
        parts = List.copyOf(parts);
        pockets = List.copyOf(pockets);
        unknowns = List.copyOf(unknowns);
    }
}
