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

    /** A block with its height. */
    private record Measured(Placed placed, double height) {}

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

    /** Blocks that belong together, such as a step; the name heads what spills onto a further page. */
    record Group(String name, List<Placed> blocks) {}

    void group(Group group) {
        List<Measured> blocks = group.blocks().stream().map(this::measure).toList();
        double height = height(blocks);
        boolean fits = y + height <= depth;
        if (!fits && y > 0 && height <= depth && depth - y < LARGEST_EMPTY_SHARE * depth) {
            newPage();
        }
        boolean begun = false;
        for (List<Measured> chain : chains(blocks)) {
            if (y > 0 && y + height(chain) > depth) {
                newPage();
                if (begun) {
                    resume(group.name());
                }
            }
            chain.forEach(this::set);
            begun = true;
        }
    }

    private void resume(String name) {
        if (!name.isEmpty()) {
            set(measure(new Placed(new Block.Paragraph(Style.STAGE, name + ", continued"), 0)));
        }
    }

    private void set(Measured block) {
        if (y > 0 || !(block.placed().block() instanceof Block.Gap)) {
            pages.get(pages.size() - 1).add(new Set(block.placed(), y));
            y += block.height();
        }
    }

    private void newPage() {
        pages.add(new ArrayList<>());
        y = 0;
    }

    /** Runs of blocks that must not be parted. */
    private static List<List<Measured>> chains(List<Measured> blocks) {
        List<List<Measured>> chains = new ArrayList<>();
        boolean joined = false;
        for (Measured block : blocks) {
            if (!joined) {
                chains.add(new ArrayList<>());
            }
            chains.get(chains.size() - 1).add(block);
            joined = block.placed().block().keepWithNext();
        }
        return chains;
    }

    private static double height(List<Measured> blocks) {
        return blocks.stream().mapToDouble(Measured::height).sum();
    }

    private Measured measure(Placed placed) {
        return new Measured(placed, placed.block().height(faces, width - placed.indent()));
    }
}
