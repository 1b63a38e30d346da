package org.strawblue.core.job;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.strawblue.core.part.Feature;
import org.strawblue.core.part.PartShape;
import org.strawblue.core.quantity.Band;
import org.strawblue.core.steel.Duty;
import org.strawblue.core.steel.Grade;

/**
 * One part to be made. What is absent was left out of the job file or is not known there; the latter is also among the
 * job's {@link Job#unknowns()}.
 *
 * @param steel a grade of the catalogue, or one made up of an analysis
 * @param duty what the part has to do
 * @param hardness wanted [HRC]
 * @param asQuenched hardness measured before tempering [HRC]
 * @param features sizes that matter
 */
public record WorkPiece(
        String name,
        Optional<Grade> steel,
        Optional<PartShape> shape,
        Optional<Duty> duty,
        Optional<Band> hardness,
        OptionalDouble asQuenched,
        HardenWish harden,
        TemperWish temper,
        List<Feature> features) {

    public WorkPiece {
        features = List.copyOf(features);
    }
}
