package org.strawblue.app.report.paper;

import java.util.ArrayList;
import java.util.List;

/**
 * Sets blocks one below the other and breaks them over pages: a group stays whole where it can without leaving much of
 * a page empty, and a block that must stand with the next never ends a page.
 */
final class Flow {

    private static final double LARGEST_EMPTY_SHARE = 0.22;

    /** A block with room to its left. */
    record Placed(Block block, double indent) {}

    /** A block with its place. */
    record Set(Placed placed, double y) {}

    private final Typefaces faces;
    private final double width;
    private final double depth;
    private final List<List<Set>> pages = new ArrayList<>();
    private double y;

    /** @param depth of a page's body */
    Flow(Typefaces faces, double width, double depth) {
        this.faces = faces;
        this.width = width;
        this.depth = depth;
        newPage();
    }

    List<List<Set>> pages() {
        return pages;
    }

    /** Blocks that belong together, such as a step. */
    record Group(String name, List<Placed> blocks) {}

    void group(Group group) {
        List<Placed> blocks = group.blocks();
        double height = height(blocks);
        boolean fits = y + height <= depth;
        if (!fits && y > 0 && height <= depth && depth - y < LARGEST_EMPTY_SHARE * depth) {
            newPage();
        }
        boolean begun = false;
        for (List<Placed> chain : chains(blocks)) {
            if (y > 0 && y + height(chain) > depth) {
                newPage();
                if (begun && !group.name().isEmpty()) {
                    set(new Placed(new Block.Paragraph(Style.STAGE, group.name() + ", continued"), 0));
                }
            }
            chain.forEach(this::set);
            begun = true;
        }
    }

    private void set(Placed placed) {
        if (y == 0 && placed.block() instanceof Block.Gap) {
            return;
        }
        pages.get(pages.size() - 1).add(new Set(placed, y));
        y += height(placed);
    }

    private void newPage() {
        pages.add(new ArrayList<>());
        y = 0;
    }

    /** Runs of blocks that must not be parted. */
    private static List<List<Placed>> chains(List<Placed> blocks) {
        List<List<Placed>> chains = new ArrayList<>();
        boolean joined = false;
        for (Placed placed : blocks) {
            if (!joined) {
                chains.add(new ArrayList<>());
            }
            chains.get(chains.size() - 1).add(placed);
            joined = placed.block().keepWithNext();
        }
        return chains;
    }

    private double height(List<Placed> blocks) {
        return blocks.stream().mapToDouble(this::height).sum();
    }

    private double height(Placed placed) {
        return placed.block().height(faces, width - placed.indent());
    }
}
