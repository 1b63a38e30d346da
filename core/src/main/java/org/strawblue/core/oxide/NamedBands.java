package org.strawblue.core.oxide;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import org.strawblue.core.quantity.Band;
import org.strawblue.core.quantity.Dimension;

/** From which to which thickness [m] a film bears each name, in one light: found by trying. */
final class NamedBands {

    private static final double STEP = FilmPalette.limit() / 800;
    private final Map<ColourName, Band> bands = new EnumMap<>(ColourName.class);

    NamedBands(FilmPalette palette) {
        ColourName name = ColourName.BRIGHT;
        double from = 0;
        for (double x = 0; x <= FilmPalette.limit(); x += STEP) {
            ColourName here = palette.colour(x).name();
            if (here != name) {
                bands.putIfAbsent(name, new Band(Dimension.LENGTH, from, x));
                name = here;
                from = x;
            }
        }
        bands.putIfAbsent(name, new Band(Dimension.LENGTH, from, FilmPalette.limit()));
    }

    /** Absent where the name does not come in this light. */
    Optional<Band> of(ColourName name) {
        return Optional.ofNullable(bands.get(name));
    }
}
