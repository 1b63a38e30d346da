package org.strawblue.core.job.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.strawblue.core.job.Picture;
import org.strawblue.core.job.Picture.Cell;
import org.strawblue.core.job.Picture.Corner;
import org.strawblue.core.part.PartShape;
import org.strawblue.core.quantity.Phrase;

/** The section of a lying part in level slices, each at the temperature of its height. */
final class SectionPicture {

    private static final int SLICES = 24;

    private final List<Cell> cells = new ArrayList<>();
    private final List<Double> heights = new ArrayList<>();
    private final PartShape shape;
    private final double height;

    private SectionPicture(PartShape shape) {
        this.shape = shape;
        this.height = shape instanceof PartShape.Tube tube ? tube.outside() : shape.section();
        double[] levels = levels();
        for (int i = 0; i < levels.length - 1; i++) {
            double low = levels[i];
            double high = levels[i + 1];
            if (shape instanceof PartShape.SteppedPin pin) {
                along(pin, low, high);
            } else {
                slice(low, high);
            }
        }
    }

    /** Close together at top and bottom, outside and in the hole, where the width of what is round changes most. */
    private double[] levels() {
        DoubleStream hole = shape instanceof PartShape.Tube tube ? levels(tube.inside() / 2) : DoubleStream.empty();
        return DoubleStream.concat(levels(height / 2), hole).sorted().distinct().toArray();
    }

    private DoubleStream levels(double radius) {
        return IntStream.rangeClosed(0, SLICES).mapToDouble(i -> height / 2 - radius * Math.cos(Math.PI * i / SLICES));
    }

    /** A stepped pin is cut along its axis. */
    private void along(PartShape.SteppedPin pin, double low, double high) {
        double from = 0;
        for (PartShape.SteppedPin.Piece piece : pin.pieces()) {
            double to = from + piece.length();
            double bottom = Math.max(low, (height - piece.diameter()) / 2);
            double top = Math.min(high, (height + piece.diameter()) / 2);
            if (top > bottom) {
                add(from, to, from, to, bottom, top);
            }
            from = to;
        }
    }

    static Picture of(PartShape shape, Phrase caption, double[] seconds, PlateHeat heat) {
        SectionPicture picture = new SectionPicture(shape);
        List<Picture.Moment> moments = new ArrayList<>();
        for (double at : seconds) {
            double[] k = heat.section(at);
            moments.add(new Picture.Moment(
                    at, picture.heights.stream().map(y -> picture.between(k, y)).toList()));
        }
        return new Picture.SectionWarming(caption, picture.cells, moments, true);
    }

    /** Straight from underside over core to top. */
    private double between(double[] k, double y) {
        double share = y / height;
        return share < 0.5 ? k[0] + (k[1] - k[0]) * 2 * share : k[1] + (k[2] - k[1]) * (2 * share - 1);
    }

    private void slice(double low, double high) {
        double inLow = hole(low);
        double inHigh = hole(high);
        if (inLow == 0 && inHigh == 0) {
            add(-outer(low), outer(low), -outer(high), outer(high), low, high);
        } else {
            add(-outer(low), -inLow, -outer(high), -inHigh, low, high);
            add(inLow, outer(low), inHigh, outer(high), low, high);
        }
    }

    private void add(double x1, double x2, double x3, double x4, double low, double high) {
        cells.add(new Cell(
                List.of(new Corner(x1, low), new Corner(x2, low), new Corner(x4, high), new Corner(x3, high))));
        heights.add((low + high) / 2);
    }

    /** Half the width of the section at a height [m]. */
    private double outer(double y) {
        if (shape instanceof PartShape.Flat flat) {
            return flat.width() / 2;
        }
        return shape instanceof PartShape.SquareBar ? height / 2 : chord(height / 2, y);
    }

    private double hole(double y) {
        return shape instanceof PartShape.Tube tube ? chord(tube.inside() / 2, y) : 0;
    }

    private double chord(double radius, double y) {
        double up = y - height / 2;
        return Math.sqrt(Math.max(0, radius * radius - up * up));
    }
}
