package org.strawblue.app.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.strawblue.app.input.Drawer;
import org.strawblue.app.input.DrawerReader;
import org.strawblue.app.input.QuantityReader;
import org.strawblue.app.input.Read;
import org.strawblue.app.report.Screen;
import org.strawblue.app.service.Sheet;
import org.strawblue.app.service.SpringService;
import org.strawblue.core.quantity.Band;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.spring.MeasuredSpring;
import org.strawblue.core.spring.Pocket;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** What a compression spring does, whether it works in a pocket, and which of a drawer does. */
@Command(
        name = "spring",
        mixinStandardHelpOptions = true,
        addMethodSubcommands = false,
        description = {
            "What a measured compression spring does; with a pocket, whether it works there;"
                    + " with a drawer file and a pocket, which springs work, as they are or cut down."
        },
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {"0:answered", "1:refused, with the reason", "2:bad input"},
        footer = {
            "",
            "Examples:",
            "  strawblue spring --wire 0.8mm --outside 7mm --free-length 30mm --coils 10 --ends \"closed and ground\"",
            "      its rate, solid length and stress",
            "  strawblue spring --wire 1/32in --outside 9/32in --free-length \"1 1/8 in\" --coils 10 \\",
            "      --bore 0.3in --rest 1in --travel 1/4in --units inch",
            "      does it work in this hole?",
            "  strawblue spring --drawer examples/drawer.csv --bore 8.2mm --rest 22mm --travel 6mm --force-at-rest 4-8N",
            "      which of the drawer does?"
        })
final class SpringCommand extends Answering {

    private static final String HEADS = "name,wire,outside,free length,coils,ends,material\n";

    @ArgGroup(exclusive = false, heading = "The spring:%n")
    private Measured measured = new Measured();

    @ArgGroup(exclusive = false, heading = "The pocket:%n")
    private Place place = new Place();

    @Option(names = "--drawer", paramLabel = "FILE.csv", description = "A file of springs to choose from.")
    private @Nullable Path drawer;

    /** Read by the reader of drawers, as a drawer of one. */
    private static final class Measured {
        @Option(names = "--wire", paramLabel = "SIZE", description = "Wire diameter.")
        private @Nullable String wire;

        @Option(names = "--outside", paramLabel = "SIZE", description = "Outside diameter.")
        private @Nullable String outside;

        @Option(names = "--free-length", paramLabel = "SIZE", description = "Length when free.")
        private @Nullable String freeLength;

        @Option(names = "--coils", paramLabel = "N", description = "All coils, tip to tip.")
        private @Nullable String coils;

        @Option(
                names = "--ends",
                paramLabel = "WORDS",
                description = "closed and ground, closed, open, open and ground.")
        private @Nullable String ends;

        @Option(names = "--material", paramLabel = "WORDS", description = "music wire, stainless, ...")
        private @Nullable String material;

        private String row() {
            return Stream.of("the spring", wire, outside, freeLength, coils, ends, material)
                    .map(text -> text == null ? "" : "\"" + text.replace("\"", "\"\"") + "\"")
                    .collect(Collectors.joining(","));
        }

        private void need(Question question) {
            needOne(question, "--wire", wire);
            needOne(question, "--outside", outside);
            needOne(question, "--free-length", freeLength);
            needOne(question, "--coils", coils);
        }

        private static void needOne(Question question, String option, @Nullable String text) {
            if (text == null || QuantityReader.notKnown(text)) {
                question.missing(option, text, "a measured size of the spring, or --drawer FILE.csv");
            }
        }
    }

    private static final class Place {
        @Option(names = "--bore", paramLabel = "SIZE", description = "Hole it lies in.")
        private @Nullable String bore;

        @Option(names = "--rod", paramLabel = "SIZE", description = "Rod it lies on.")
        private @Nullable String rod;

        @Option(names = "--rest", paramLabel = "SIZE", description = "Length at rest, assembled.")
        private @Nullable String rest;

        @Option(names = "--travel", paramLabel = "SIZE", description = "How much further it is pushed.")
        private @Nullable String travel;

        @Option(names = "--force-at-rest", paramLabel = "FORCE", description = "Wanted: 4-8 N, \"about 1.5 lbf\".")
        private @Nullable String forceAtRest;

        @Option(names = "--force-at-full-travel", paramLabel = "FORCE", description = "Wanted at full travel.")
        private @Nullable String forceAtFullTravel;
    }

    SpringCommand(Screen screen) {
        super(screen);
    }

    @Override
    Optional<Sheet> ask(Question question) {
        Optional<Pocket> pocket = place.rest == null && place.travel == null && drawer == null
                ? Optional.empty()
                : Optional.of(pocket(question));
        List<MeasuredSpring> springs = springs(question);
        return question.answer(() -> drawer != null
                ? SpringService.drawer(springs, pocket.orElseThrow())
                : pocket.map(p -> SpringService.inPocket(springs.get(0), p))
                        .orElseGet(() -> SpringService.spring(springs.get(0))));
    }

    private List<MeasuredSpring> springs(Question question) {
        if (drawer == null) {
            measured.need(question);
        }
        Read<Drawer> read = drawer == null
                ? DrawerReader.read("spring", HEADS + measured.row(), question.units())
                : DrawerReader.read(drawer, question.units());
        question.problems().addAll(read.problems());
        List<MeasuredSpring> springs = read.value().map(Drawer::springs).orElse(List.of());
        if (springs.isEmpty() && question.problems().isEmpty()) {
            question.missing("--drawer", String.valueOf(drawer), "a drawer with at least one spring");
        }
        return springs;
    }

    private Pocket pocket(Question question) {
        OptionalDouble bore = question.si("--bore", place.bore, Dimension.LENGTH);
        OptionalDouble rod = question.si("--rod", place.rod, Dimension.LENGTH);
        double rest = question.needed("--rest", place.rest, Dimension.LENGTH);
        double travel = question.needed("--travel", place.travel, Dimension.LENGTH);
        Optional<Band> atRest = question.band("--force-at-rest", place.forceAtRest, Dimension.FORCE);
        Optional<Band> atFull = question.band("--force-at-full-travel", place.forceAtFullTravel, Dimension.FORCE);
        if (question.problems().isEmpty() && !(rest > travel)) {
            question.problem("--travel", String.valueOf(place.travel), "less than the length at rest", "Check both.");
        }
        return new Pocket(
                "the pocket",
                bore,
                rod,
                rest > 0 ? rest : 1,
                Math.max(0, travel),
                atRest,
                atFull,
                Optional.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty());
    }
}
