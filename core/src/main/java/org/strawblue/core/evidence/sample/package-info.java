/**
 * What is not known of a heat: the influences, what is believed of each, and an ensemble of histories drawn from them that
 * evidence can weigh.
 */
@NullMarked
package org.strawblue.core.evidence.sample;

import org.jspecify.annotations.NullMarked;
