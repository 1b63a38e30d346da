package org.strawblue.app.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.strawblue.app.input.LogReader;
import org.strawblue.app.input.LoggedOven;
import org.strawblue.app.input.OvenLogReader;
import org.strawblue.app.input.Problem;
import org.strawblue.app.input.ProblemPrinter;
import org.strawblue.app.input.Read;
import org.strawblue.app.input.StateFile;
import org.strawblue.app.report.Screen;
import org.strawblue.app.service.LearnService;
import org.strawblue.app.service.Lesson;
import org.strawblue.app.service.Sheet;
import org.strawblue.core.evidence.learn.ShopKnowledge;
import org.strawblue.core.job.HeatLog;
import org.strawblue.core.pyrometry.OvenThermometer;
import org.strawblue.core.pyrometry.TemperatureIndicator;
import org.strawblue.core.pyrometry.Thermocouple;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.steel.Steel;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Learns the shop from its logs. */
@Command(
        name = "learn",
        mixinStandardHelpOptions = true,
        addMethodSubcommands = false,
        description = {
            "What logs tell of this shop's own oven, plate, gun, crayons and steel. The log of an oven (CSV: a column of times,"
                    + " one of temperatures) gives its offset, swing and period, and with --grade what they cost in hardness. A"
                    + " log of what was seen of a heat, as for judge, tells of the things it was done with. With --state what"
                    + " was learned is kept, and one job is not believed more than it is worth."
        },
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {
            "0:answered",
            "1:refused: too short to tell, with the reason; nothing is written",
            "2:bad input: every fault is listed, nothing is written"
        },
        footer = {
            "",
            "Examples:",
            "  strawblue learn examples/logs/oven-200.csv --set 200C --grade O1",
            "      how far the oven is off, and what that does to O1 in an hour",
            "  strawblue learn examples/logs/oven-200.csv --oven \"toaster\" --state shop.yaml",
            "  strawblue learn examples/logs/oven-1-punch.yaml \\",
            "      examples/logs/oven-2-scriber.yaml --state shop.yaml",
            "  strawblue judge examples/logs/oven-4-gauge.yaml --state shop.yaml",
            "      with what the logs taught"
        })
final class LearnCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec;

    private final Screen screen;

    @Parameters(paramLabel = "LOG", arity = "1..*", description = "Logs of ovens (CSV), or of heats (as for judge).")
    private List<Path> files = List.of();

    @Option(names = "--set", paramLabel = "T", description = "What the oven was set to, where its log does not say.")
    private @Nullable String set;

    @Option(names = "--oven", paramLabel = "NAME", description = "What you call the oven; \"the oven\" if not told.")
    private String oven = "the oven";

    @Option(
            names = "--by",
            paramLabel = "WHAT",
            description = "What measured it: thermocouple (if not told) or \"oven thermometer\".")
    private @Nullable String by;

    @Mixin
    private SteelOptions steel;

    @Option(names = "--time", paramLabel = "t", description = "Time of the temper for --grade; 1 h if not told.")
    private String time = "1 h";

    @Option(names = "--state", paramLabel = "FILE", description = "Where the shop keeps what it has learned.")
    private @Nullable Path state;

    @Mixin
    private OutputOptions output;

    LearnCommand(Screen screen) {
        this.screen = screen;
    }

    @Override
    public Integer call() {
        Question question = new Question(output.units());
        OptionalDouble told = question.si("--set", set, Dimension.TEMPERATURE);
        Optional<TemperatureIndicator> instrument = instrument(question);
        Optional<LearnService.Tempered> temper = temper(question);
        List<Problem> problems = question.problems();
        if (oven.isBlank()) {
            question.problem("--oven", oven, "a name for the oven", "Call it something, or leave --oven out.");
        }
        Read<ShopKnowledge> before = state == null
                ? new Read<>(Optional.of(ShopKnowledge.NOTHING), List.of(), List.of())
                : StateFile.read(state);
        List<String> notes = new ArrayList<>(before.notes());
        problems.addAll(before.problems());
        LearnService service = LearnService.from(before.value().orElse(ShopKnowledge.NOTHING));
        List<Runnable> lessons = new ArrayList<>();
        for (Path file : files) {
            read(file, service, told, instrument, temper, problems, notes).ifPresent(lessons::add);
        }
        notes.forEach(spec.commandLine().getErr()::println);
        if (!problems.isEmpty()) {
            spec.commandLine().getErr().print(new ProblemPrinter(screen.columns(), screen.colours()).print(problems));
            spec.commandLine().getErr().flush();
            return ExitCode.BAD_INPUT;
        }
        lessons.forEach(Runnable::run);
        return tell(service.lesson(), question);
    }

    /** What is to be done with a file, once all could be read. */
    private Optional<Runnable> read(
            Path file,
            LearnService service,
            OptionalDouble told,
            Optional<TemperatureIndicator> instrument,
            Optional<LearnService.Tempered> temper,
            List<Problem> problems,
            List<String> notes) {
        if (OvenLogReader.isOne(file)) {
            Read<LoggedOven> read = OvenLogReader.read(file, output.units());
            problems.addAll(read.problems());
            notes.addAll(read.notes());
            return read.value()
                    .map(log -> () -> service.oven(
                            log.name(),
                            oven,
                            log.trace(),
                            log.set().isPresent() ? log.set() : told,
                            instrument.orElseThrow(),
                            temper));
        }
        Read<HeatLog> read = LogReader.read(file);
        problems.addAll(read.problems());
        notes.addAll(read.notes());
        return read.value().map(log -> () -> service.heat(String.valueOf(file.getFileName()), log, oven));
    }

    private Optional<TemperatureIndicator> instrument(Question question) {
        String word = by == null ? "thermocouple" : by.strip().toLowerCase(Locale.ROOT);
        Optional<TemperatureIndicator> found = switch (word) {
            case "thermocouple", "probe", "logger", "don't know" -> Optional.of(new Thermocouple("K", 2));
            case "oven thermometer", "thermometer" -> Optional.of(new OvenThermometer());
            default -> Optional.empty();
        };
        return question.word("--by", by, found, () -> "thermocouple, oven thermometer");
    }

    private Optional<LearnService.Tempered> temper(Question question) {
        Optional<Steel> known = steel.given() ? steel.steel(question) : Optional.empty();
        double seconds = question.needed("--time", time, Dimension.TIME);
        if (question.problems().isEmpty() && !(seconds > 0)) {
            question.problem("--time", time, "more than 0", "Give the time of the temper.");
        }
        return known.filter(k -> question.problems().isEmpty())
                .map(k -> new LearnService.Tempered(steel.complete(k), seconds));
    }

    private int tell(Lesson lesson, Question question) {
        var sheet = lesson.sheet();
        var findings = new ArrayList<>(question.findings());
        findings.addAll(sheet.findings());
        var out = spec.commandLine().getOut();
        out.print(output.print(new Sheet(sheet.title(), sheet.entries(), findings), screen));
        out.flush();
        if (sheet.refused()) {
            return ExitCode.REFUSED;
        }
        if (state != null) {
            keep(state, lesson.knowledge());
        }
        return ExitCode.FINE;
    }

    /** Written beside and moved, so that a fault leaves the old file whole. */
    private static void keep(Path state, ShopKnowledge knowledge) {
        Path whole = state.toAbsolutePath();
        try {
            Path folder = whole.getParent();
            if (folder != null) {
                Files.createDirectories(folder);
            }
            Path beside = whole.resolveSibling(whole.getFileName() + ".new");
            Files.writeString(beside, StateFile.write(knowledge));
            Files.move(beside, whole, StandardCopyOption.REPLACE_EXISTING);
        } catch (IOException e) {
            throw new FileTrouble(state, e);
        }
    }
}
