package org.strawblue.core.job;

import java.util.Optional;
import org.strawblue.core.quantity.Band;

/**
 * A size of a part that matters.
 *
 * @param kind "outside diameter", "bore", "length", "width", "thickness", "thread"
 * @param size nominal [m]
 * @param limits finished size [m], where the file gives limits or a fit
 * @param finish how it is to be brought to size: "lap", "ream", "grind"
 */
public record FeatureWish(
        String name, String kind, double size, Optional<Band> limits, Optional<String> fit, Optional<String> finish) {}
