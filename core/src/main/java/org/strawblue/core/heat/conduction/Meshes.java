package org.strawblue.core.heat.conduction;

import org.strawblue.core.heat.course.Course;
import org.strawblue.core.heat.course.Setting;
import org.strawblue.core.part.PartShape;

/** Chooses how a part is divided for a course. */
final class Meshes {

    private Meshes() {}

    static Mesh of(Course course, Fineness fineness) {
        PartShape shape = course.shape();
        boolean partly = course.spells().stream().anyMatch(s -> s.setting() instanceof Setting.Partly);
        if (partly || shape instanceof PartShape.SteppedPin) {
            return Rod.of(shape, fineness);
        }
        boolean plate = course.spells().stream().anyMatch(s -> plate(s.setting()));
        if (shape instanceof PartShape.RoundBar bar) {
            return round(0, bar.diameter() / 2, bar.length(), plate, fineness);
        }
        if (shape instanceof PartShape.Tube tube) {
            return round(tube.inside() / 2, tube.outside() / 2, tube.length(), plate, fineness);
        }
        if (shape instanceof PartShape.SquareBar bar) {
            return FlatSection.of(bar.side(), bar.side(), bar.length(), fineness);
        }
        PartShape.Flat flat = (PartShape.Flat) shape;
        return FlatSection.of(flat.thickness(), flat.width(), flat.length(), fineness);
    }

    private static boolean plate(Setting setting) {
        return setting instanceof Setting.OnPlate || setting instanceof Setting.OnSaggingPlate;
    }

    private static Mesh round(double hole, double radius, double length, boolean plate, Fineness fineness) {
        return plate
                ? RoundSection.onPlate(hole, radius, length, fineness)
                : RoundSection.allRound(hole, radius, length, fineness);
    }
}
