package org.strawblue.core.job;

import java.util.List;
import java.util.Optional;
import org.strawblue.core.part.PartShape;
import org.strawblue.core.quantity.Band;

/**
 * One part to be made. What is absent was left out of the job file or is not known there; the latter is also among the
 * job's {@link Job#unknowns()}.
 *
 * @param duty what the part has to do: "wear", "impact", "spring"
 * @param hardness wanted [HRC]
 * @param features sizes that matter, before hardening or after
 */
public record WorkPiece(
        String name,
        Optional<SteelChoice> steel,
        Optional<PartShape> shape,
        Optional<String> duty,
        Optional<Band> hardness,
        HardenWish harden,
        TemperWish temper,
        List<FeatureWish> features) {

    public WorkPiece {
        features = List.copyOf(features);
    }
}
