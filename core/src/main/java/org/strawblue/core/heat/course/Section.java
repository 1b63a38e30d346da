package org.strawblue.core.heat.course;

import org.strawblue.core.part.PartShape;

/**
 * A part as the fast model sees it: heat it holds, surfaces it has, how far heat must go inside it.
 *
 * @param volume [m³]
 * @param surface all of it that is in the open [m²]
 * @param base side that lies on a plate [m²]; 0 for what lies along a line
 * @param line length along which a round part lies [m]; 0 for what lies flat
 * @param radius of the outside [m]; of a round part with a flat's section half of it
 * @param wall of a tube, the radius of a solid bar [m]
 * @param height over the plate [m]
 * @param surfaceDepth mean temperature to surface, heated all round: q·depth/k [m]
 * @param coreDepth core to mean temperature, heated all round: q·depth/k [m]
 */
record Section(
        double volume,
        double surface,
        double base,
        double line,
        double radius,
        double wall,
        double height,
        double surfaceDepth,
        double coreDepth) {

    static Section of(PartShape shape) {
        if (shape instanceof PartShape.RoundBar bar) {
            return round(bar.diameter() / 2, 0, bar.length());
        }
        if (shape instanceof PartShape.Tube tube) {
            return round(tube.outside() / 2, tube.inside() / 2, tube.length());
        }
        if (shape instanceof PartShape.SquareBar bar) {
            return flat(bar.side(), bar.side(), bar.length(), bar.side() / 8, bar.side() / 8);
        }
        if (shape instanceof PartShape.SteppedPin pin) {
            return stepped(pin);
        }
        PartShape.Flat flat = (PartShape.Flat) shape;
        return flat(flat.thickness(), flat.width(), flat.length(), flat.thickness() / 6, flat.thickness() / 12);
    }

    /** As a bar of the same length and volume, with the surface it has. */
    private static Section stepped(PartShape.SteppedPin pin) {
        double area = pin.pieces().stream()
                        .mapToDouble(p -> p.diameter() * p.diameter() * p.length())
                        .sum()
                * Math.PI
                / 4
                / pin.length();
        Section bar = round(Math.sqrt(area / Math.PI), 0, pin.length());
        return new Section(
                bar.volume,
                bar.volume / pin.volumeOverSurface(),
                0,
                bar.line,
                bar.radius,
                bar.wall,
                bar.height,
                bar.surfaceDepth,
                bar.coreDepth);
    }

    private static Section round(double outside, double inside, double length) {
        double area = Math.PI * (outside * outside - inside * inside);
        double wall = outside - inside;
        boolean solid = inside == 0;
        double depth = solid ? outside / 4 : wall / 6;
        return new Section(
                area * length,
                2 * Math.PI * (outside + inside) * length + 2 * area,
                0,
                length,
                outside,
                wall,
                2 * outside,
                depth,
                solid ? depth : wall / 12);
    }

    private static Section flat(double thickness, double width, double length, double surface, double core) {
        return new Section(
                thickness * width * length,
                2 * (thickness * width + thickness * length + width * length),
                width * length,
                0,
                width / 2,
                thickness,
                thickness,
                surface,
                core);
    }

    boolean round() {
        return line > 0;
    }
}
