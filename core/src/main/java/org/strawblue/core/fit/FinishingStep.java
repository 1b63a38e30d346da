package org.strawblue.core.fit;

import org.strawblue.core.quantity.Phrase;

/** One thing to do to one size. */
public record FinishingStep(Phrase lead, Phrase reason) {}
