package org.strawblue.app.cli;

import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import org.strawblue.app.input.Lexicon;
import org.strawblue.core.quantity.Band;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.spring.Feel;
import org.strawblue.core.spring.Pocket;
import org.strawblue.core.spring.PreloadScrew;
import org.strawblue.core.spring.Seating;
import picocli.CommandLine.Option;

/** The place a spring works in, on the command line. */
final class PocketOptions {

    private static final Map<String, Seating> SEATINGS = Map.of(
            "flat", Seating.BOTH_FLAT,
            "flat and pivoted", Seating.FLAT_AND_PIVOTED,
            "pivoted", Seating.BOTH_PIVOTED,
            "flat and free", Seating.FLAT_AND_FREE);

    @Option(names = "--bore", paramLabel = "SIZE", description = "Hole it lies in.")
    private @Nullable String bore;

    @Option(names = "--rod", paramLabel = "SIZE", description = "Rod it lies on.")
    private @Nullable String rod;

    @Option(names = "--rest", paramLabel = "SIZE", description = "Length at rest, assembled.")
    private @Nullable String rest;

    @Option(names = "--travel", paramLabel = "SIZE", description = "How much further it is pushed.")
    private @Nullable String travel;

    @Option(
            names = "--force-at-rest",
            paramLabel = "FORCE",
            description = "Wanted: 4-8 N, \"about 1.5 lbf\", \"firm by thumb\".")
    private @Nullable String forceAtRest;

    @Option(names = "--force-at-full-travel", paramLabel = "FORCE", description = "Wanted at full travel.")
    private @Nullable String forceAtFullTravel;

    @Option(names = "--seating", paramLabel = "WORDS", description = "flat, flat and pivoted, pivoted, flat and free.")
    private @Nullable String seating;

    @Option(names = "--cycles", paramLabel = "N", description = "How often it is pushed in its life.")
    private @Nullable String cycles;

    @Option(names = "--hottest", paramLabel = "T", description = "The hottest it works at.")
    private @Nullable String hottest;

    @Option(names = "--screw", paramLabel = "THREAD", description = "Of a preload screw: M6, M6x0.75, 1/4-20.")
    private @Nullable String screw;

    @Option(names = "--wet", description = "It may get wet.")
    private boolean wet;

    /** Whether anything of a pocket was told. */
    boolean given() {
        return rest != null || travel != null;
    }

    Pocket pocket(Question question) {
        OptionalDouble wide = question.si("--bore", bore, Dimension.LENGTH);
        OptionalDouble thick = question.si("--rod", rod, Dimension.LENGTH);
        double atRest = question.needed("--rest", rest, Dimension.LENGTH);
        double goes = question.needed("--travel", travel, Dimension.LENGTH);
        Optional<Band> restForce = force(question, "--force-at-rest", forceAtRest);
        Optional<Band> fullForce = force(question, "--force-at-full-travel", forceAtFullTravel);
        Optional<Seating> held = question.word(
                "--seating",
                seating,
                seating == null
                        ? Optional.empty()
                        : Lexicon.of("seating").find(seating).map(SEATINGS::get),
                () -> String.join(", ", Lexicon.of("seating").words()));
        OptionalDouble often = question.si("--cycles", cycles, Dimension.NUMBER);
        OptionalDouble hot = question.si("--hottest", hottest, Dimension.TEMPERATURE);
        Optional<PreloadScrew> thread = question.word(
                "--screw",
                screw,
                screw == null ? Optional.empty() : PreloadScrew.of(screw),
                () -> "M6, M6x0.75, 1/4-20");
        if (question.problems().isEmpty() && !(atRest > goes)) {
            question.problem("--travel", String.valueOf(travel), "less than the length at rest", "Check both.");
        }
        return new Pocket(
                "the pocket",
                wide,
                thick,
                atRest > 0 ? atRest : 1,
                Math.max(0, goes),
                restForce,
                fullForce,
                held,
                often,
                hot,
                thread,
                wet);
    }

    private static Optional<Band> force(Question question, String option, @Nullable String text) {
        Optional<Band> felt =
                text == null ? Optional.empty() : Lexicon.of("feel").find(text).flatMap(Feel::force);
        return felt.isPresent() ? felt : question.band(option, text, Dimension.FORCE);
    }
}
