package org.strawblue.app.input;

import java.util.Optional;
import org.strawblue.core.quantity.Band;

/**
 * A size as a drawing gives it.
 *
 * @param nominal [m]
 * @param limits smallest and largest allowed [m], where the text gives them as numbers
 * @param fit tolerance class such as h6 or H7, where the text gives one
 */
public record Size(double nominal, Optional<Band> limits, Optional<String> fit) {}
