package org.strawblue.core.job.plan;

import org.strawblue.core.job.Job;
import org.strawblue.core.job.WorkPiece;
import org.strawblue.core.part.PartShape;
import org.strawblue.core.steel.Element;
import org.strawblue.core.steel.Grade;
import org.strawblue.core.steel.Quenchant;
import org.strawblue.core.steel.Steel;

/** What the steps of one part are worked out from, once its steel and shape are known. */
record Brief(Job job, WorkPiece piece, Grade grade, PartShape shape) {

    /** The steel as the tempering laws take it. */
    Steel steel() {
        return grade.catalogued()
                ? Steel.ofGrade(grade.name()).with(grade.composition())
                : Steel.of(grade.composition());
    }

    /** [mass %] */
    double chromium() {
        return grade.composition().of(Element.CR);
    }

    boolean hardensInAir() {
        return grade.madeFor()
                .filter(f -> f == Quenchant.Family.AIR || f == Quenchant.Family.PLATES)
                .isPresent();
    }
}
