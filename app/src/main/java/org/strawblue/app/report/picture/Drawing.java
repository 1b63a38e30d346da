package org.strawblue.app.report.picture;

import java.util.List;

/**
 * A drawing: marks on a sheet whose origin is at the upper left, one unit a CSS pixel.
 *
 * @param title what it shows, in a few words
 * @param description the same told to someone who cannot see it
 */
public record Drawing(String title, String description, double width, double height, List<Mark> marks) {

    /** Every picture of the card is this wide, so that its lettering stays legible on a phone. */
    public static final double WIDTH = 340;

    public Drawing {
        marks = List.copyOf(marks);
    }
}
