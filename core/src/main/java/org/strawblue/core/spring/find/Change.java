package org.strawblue.core.spring.find;

import org.strawblue.core.quantity.Phrase;
import org.strawblue.core.spring.MeasuredSpring;
import org.strawblue.core.spring.Pocket;

/**
 * A change of the pocket that would let a spring of the drawer work.
 *
 * @param what to do, with figures
 * @param share by which that figure changes [1]
 * @param changed the pocket afterwards
 * @param spring that would work then
 */
public record Change(Phrase what, double share, Pocket changed, MeasuredSpring spring) {}
