package org.strawblue.core.job.plan;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.strawblue.core.colour.Light;
import org.strawblue.core.evidence.HardnessCheck;
import org.strawblue.core.heat.HeatSources;
import org.strawblue.core.job.AssemblyWish;
import org.strawblue.core.job.HardenWish;
import org.strawblue.core.job.Job;
import org.strawblue.core.job.PocketWish;
import org.strawblue.core.job.Shop;
import org.strawblue.core.job.TemperWish;
import org.strawblue.core.job.UnitSystem;
import org.strawblue.core.job.Unknown;
import org.strawblue.core.job.WorkPiece;
import org.strawblue.core.part.Feature;
import org.strawblue.core.part.PartShape;
import org.strawblue.core.pyrometry.Crayons;
import org.strawblue.core.pyrometry.InfraredGun;
import org.strawblue.core.quantity.Band;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.spring.EndType;
import org.strawblue.core.spring.Ends;
import org.strawblue.core.spring.MeasuredSpring;
import org.strawblue.core.spring.MeasurementErrors;
import org.strawblue.core.steel.Grades;
import org.strawblue.core.steel.Quenchants;

/** Jobs for the planner's tests, each a change of one plain job: a pin of 8 mm in O1 for 59 to 61 HRC. */
final class Jobs {

    static final Band WANTED = new Band(Dimension.HARDNESS, 59, 61);

    private Jobs() {}

    static WorkPiece pin(String grade) {
        return new WorkPiece(
                "pin",
                Optional.of(Grades.of(grade)),
                Optional.of(new PartShape.RoundBar(0.008, 0.046)),
                Optional.empty(),
                Optional.of(WANTED),
                OptionalDouble.empty(),
                HardenWish.OPEN,
                TemperWish.OPEN,
                List.of(new Feature(
                        "nose",
                        Feature.Kind.OUTSIDE,
                        0.006,
                        Optional.of(new Band(Dimension.LENGTH, 0.005992, 0.006)))));
    }

    static WorkPiece with(WorkPiece p, Optional<Band> hardness, HardenWish harden, TemperWish temper) {
        return new WorkPiece(
                p.name(), p.steel(), p.shape(), p.duty(), hardness, p.asQuenched(), harden, temper, p.features());
    }

    static WorkPiece unknownSteel() {
        WorkPiece p = pin("O1");
        return new WorkPiece(
                p.name(),
                Optional.empty(),
                p.shape(),
                p.duty(),
                p.hardness(),
                p.asQuenched(),
                p.harden(),
                p.temper(),
                p.features());
    }

    static WorkPiece unknownShape() {
        WorkPiece p = pin("O1");
        return new WorkPiece(
                p.name(),
                p.steel(),
                Optional.empty(),
                p.duty(),
                p.hardness(),
                p.asQuenched(),
                p.harden(),
                p.temper(),
                List.of());
    }

    static Shop shop() {
        return new Shop(
                List.of(HeatSources.of("kiln")),
                List.of(HeatSources.of("kitchen-oven")),
                List.of(Quenchants.of("vegetable-oil"), Quenchants.of("brine")),
                List.of(new Crayons(List.of(477.6, 505.4, 533.15)), new InfraredGun(0.95)),
                List.of(new HardnessCheck.GradedFiles(List.of(55.0, 60.0, 65.0))),
                Optional.of(List.of(spring("good", 0.0008, 0.0085, 0.034), spring("fat", 0.0008, 0.012, 0.034))),
                Shop.Paper.A4);
    }

    static MeasuredSpring spring(String name, double wire, double outside, double free) {
        return new MeasuredSpring(
                name,
                1,
                wire,
                outside,
                free,
                12,
                Optional.of(Ends.both(EndType.CLOSED_GROUND)),
                Optional.of("music wire"),
                MeasurementErrors.usual(),
                1);
    }

    static PocketWish pocket() {
        return new PocketWish(
                "return spring",
                OptionalDouble.of(0.010),
                OptionalDouble.of(0.005),
                OptionalDouble.of(0.024),
                OptionalDouble.of(0.008),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty());
    }

    static Job of(WorkPiece piece) {
        return new Job(
                "test",
                UnitSystem.METRIC,
                Light.DAYLIGHT,
                List.of(piece),
                List.of(),
                AssemblyWish.NONE,
                shop(),
                List.of(),
                List.of());
    }

    static Job of(List<WorkPiece> pieces, List<PocketWish> pockets, Shop shop, List<Unknown> unknowns) {
        return new Job(
                "test",
                UnitSystem.METRIC,
                Light.DAYLIGHT,
                pieces,
                pockets,
                AssemblyWish.NONE,
                shop,
                unknowns,
                List.of());
    }
}
