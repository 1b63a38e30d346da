package org.strawblue.core.evidence.diagnosis;

import org.strawblue.core.quantity.Phrase;
import org.strawblue.core.source.Basis;

/**
 * What the program reckons of one cause from what is known of the job.
 *
 * @param chance that it is so [1]
 * @param because in a sentence
 */
record Check(double chance, Phrase because, Basis basis) {}
