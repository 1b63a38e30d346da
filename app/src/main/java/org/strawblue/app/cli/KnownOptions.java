package org.strawblue.app.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import org.strawblue.app.input.JobReader;
import org.strawblue.app.input.Read;
import org.strawblue.core.evidence.diagnosis.Known;
import org.strawblue.core.heat.HeatSource;
import org.strawblue.core.heat.HeatSources;
import org.strawblue.core.job.Job;
import org.strawblue.core.job.WorkPiece;
import org.strawblue.core.part.PartShape;
import org.strawblue.core.quantity.Band;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.source.Basis;
import org.strawblue.core.source.Standing;
import org.strawblue.core.steel.Composition;
import org.strawblue.core.steel.Grade;
import org.strawblue.core.steel.Quenchant;
import org.strawblue.core.steel.Quenchants;
import org.strawblue.core.steel.Temper;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** What is known of a job: by a job file, by options, or not at all. */
final class KnownOptions {

    @Parameters(paramLabel = "JOB", arity = "0..1", description = "A job file; what it says of the part counts.")
    private @Nullable Path job;

    @Option(names = "--part", paramLabel = "NAME", description = "Which part of the job; the only one if not told.")
    private @Nullable String part;

    @Mixin
    private SteelOptions steel;

    @Mixin
    private ShapeOptions shape;

    @Option(names = "--quench", paramLabel = "NAME", description = "What it was quenched in.")
    private @Nullable String quench;

    @Option(names = "--heat", paramLabel = "NAME", description = "What it was hardened with: torch, kiln, forge.")
    private @Nullable String heat;

    @Option(names = "--hardened-from", paramLabel = "T", description = "Temperature it was hardened from.")
    private @Nullable String hardenedFrom;

    @Option(names = "--heated-for", paramLabel = "t", description = "Time in the heat, from cold to the bath.")
    private @Nullable String heatedFor;

    @Option(names = "--tempered-at", paramLabel = "T", description = "Temperature of its temper.")
    private @Nullable String temperedAt;

    @Option(names = "--tempered-for", paramLabel = "t", description = "Time of its temper.")
    private @Nullable String temperedFor;

    @Option(names = "--wanted", paramLabel = "HRC", description = "Hardness wanted: 58-60.")
    private @Nullable String wanted;

    private Optional<WorkPiece> ofJob(Question question) {
        if (job == null) {
            if (part != null) {
                question.problem("--part", part, "a job file with it", "Name the job file, or leave --part out.");
            }
            return Optional.empty();
        }
        Read<Job> read = JobReader.read(job);
        question.problems().addAll(read.problems());
        if (read.value().isEmpty()) {
            return Optional.empty();
        }
        List<WorkPiece> parts = read.value().get().parts();
        List<WorkPiece> fit = parts.stream()
                .filter(p -> part == null || p.name().equalsIgnoreCase(part.strip()))
                .toList();
        if (fit.size() != 1) {
            String names = String.join(", ", parts.stream().map(WorkPiece::name).toList());
            question.problem("--part", part == null ? "" : part, "one of " + names, "Say which part it is.");
            return Optional.empty();
        }
        return Optional.of(fit.get(0));
    }

    /** What is told by options goes before what the job says. */
    Known known(Question question) {
        Optional<WorkPiece> piece = ofJob(question);
        Optional<Grade> grade = steel.grade(question)
                .or(() -> steel.composition(question).map(KnownOptions::analysed))
                .or(() -> piece.flatMap(WorkPiece::steel));
        Optional<PartShape> form = shape.given() ? shape.shape(question) : piece.flatMap(WorkPiece::shape);
        Optional<Quenchant> bath = question.named("--quench", quench, Quenchants::find)
                .or(() -> piece.flatMap(p -> p.harden().quench()));
        Optional<HeatSource> source = question.named("--heat", heat, HeatSources::find)
                .or(() -> piece.flatMap(p -> p.harden().with()));
        OptionalDouble from = first(
                question.si("--hardened-from", hardenedFrom, Dimension.TEMPERATURE),
                piece.map(p -> p.harden().temperature()));
        OptionalDouble in = positive(question, "--heated-for", heatedFor);
        OptionalDouble at = first(
                question.si("--tempered-at", temperedAt, Dimension.TEMPERATURE),
                piece.map(p -> p.temper().temperature()));
        OptionalDouble time = first(
                positive(question, "--tempered-for", temperedFor),
                piece.map(p -> p.temper().time()));
        Optional<Band> hardness =
                question.band("--wanted", wanted, Dimension.HARDNESS).or(() -> piece.flatMap(WorkPiece::hardness));
        Optional<Temper> temper = at.isPresent() && time.isPresent() && time.getAsDouble() > 0
                ? Optional.of(new Temper(at.getAsDouble(), time.getAsDouble()))
                : Optional.empty();
        return new Known(grade, form, bath, source, from, in, temper, hardness);
    }

    private static Grade analysed(Composition composition) {
        return Grade.of(composition, new Basis("the analysis given", "job-file", Standing.PUBLISHED));
    }

    private static OptionalDouble positive(Question question, String option, @Nullable String text) {
        OptionalDouble seconds = question.si(option, text, Dimension.TIME);
        if (text != null && seconds.isPresent() && !(seconds.getAsDouble() > 0)) {
            question.problem(option, text, "more than 0", "Give a time that can be.");
            return OptionalDouble.empty();
        }
        return seconds;
    }

    private static OptionalDouble first(OptionalDouble told, Optional<OptionalDouble> ofJob) {
        return told.isPresent() ? told : ofJob.orElse(OptionalDouble.empty());
    }
}
