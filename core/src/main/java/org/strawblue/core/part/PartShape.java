package org.strawblue.core.part;

import java.util.List;

/** The shape of a part as heat and quench see it. All lengths [m], all greater than 0. */
public sealed interface PartShape {

    /** Volume over cooled surface [m]. */
    double volumeOverSurface();

    /** The section that governs heating and hardening through [m]: diameter, side, thickness or wall. */
    double section();

    /** From end to end [m]. */
    double length();

    /** A turned pin or bar. */
    record RoundBar(double diameter, double length) implements PartShape {
        public RoundBar {
            positive(diameter, length);
        }

        @Override
        public double volumeOverSurface() {
            return diameter * length / (4 * length + 2 * diameter);
        }

        @Override
        public double section() {
            return diameter;
        }
    }

    record SquareBar(double side, double length) implements PartShape {
        public SquareBar {
            positive(side, length);
        }

        @Override
        public double volumeOverSurface() {
            return side * length / (4 * length + 2 * side);
        }

        @Override
        public double section() {
            return side;
        }
    }

    /** Plate, strip or flat bar; {@code thickness} is the smallest. */
    record Flat(double thickness, double width, double length) implements PartShape {
        public Flat {
            positive(thickness, width, length);
        }

        @Override
        public double volumeOverSurface() {
            return 1 / (2 / thickness + 2 / width + 2 / length);
        }

        @Override
        public double section() {
            return thickness;
        }
    }

    /** A bush, ring or tube, cooled inside and out. */
    record Tube(double outside, double inside, double length) implements PartShape {
        public Tube {
            positive(outside, inside, length);
            if (inside >= outside) {
                throw new IllegalArgumentException("the hole is as large as the outside");
            }
        }

        @Override
        public double volumeOverSurface() {
            return 1 / (2 / wall() + 2 / length);
        }

        @Override
        public double section() {
            return wall();
        }

        public double wall() {
            return (outside - inside) / 2;
        }
    }

    /**
     * A turned pin of several diameters.
     *
     * @param pieces from one end to the other; the first is the working end
     */
    record SteppedPin(List<Piece> pieces) implements PartShape {

        public record Piece(double diameter, double length) {
            public Piece {
                positive(diameter, length);
            }
        }

        public SteppedPin {
            pieces = List.copyOf(pieces);
            if (pieces.isEmpty()) {
                throw new IllegalArgumentException("a stepped pin needs a piece");
            }
        }

        @Override
        public double length() {
            return pieces.stream().mapToDouble(Piece::length).sum();
        }

        public double thickest() {
            return pieces.stream().mapToDouble(Piece::diameter).max().orElseThrow();
        }

        /** Ends and shoulders together are as large as two faces of the thickest piece. */
        @Override
        public double volumeOverSurface() {
            double volume = 0;
            double surface = thickest() * thickest() / 2;
            for (Piece piece : pieces) {
                volume += piece.diameter() * piece.diameter() * piece.length() / 4;
                surface += piece.diameter() * piece.length();
            }
            return volume / surface;
        }

        @Override
        public double section() {
            return thickest();
        }
    }

    private static void positive(double... lengths) {
        for (double length : lengths) {
            if (!(length > 0)) {
                throw new IllegalArgumentException("a length must be greater than 0, not " + length);
            }
        }
    }
}
