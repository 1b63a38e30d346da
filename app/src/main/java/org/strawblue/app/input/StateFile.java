package org.strawblue.app.input;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.evidence.learn.Learned;
import org.strawblue.core.evidence.learn.ShopKnowledge;
import org.strawblue.core.evidence.learn.Subject;
import org.strawblue.core.evidence.learn.Told;
import org.strawblue.core.evidence.sample.Influence;
import org.strawblue.core.evidence.sample.Priors;
import org.strawblue.core.quantity.Band;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Quantity;
import org.strawblue.core.quantity.Unit;
import org.strawblue.core.quantity.Units;

/**
 * What a shop has learned, as a YAML file that a person can read and mend: for each property of each thing what is to be expected
 * next time, on how many jobs it rests, and what each of them told. Only the last counts; the rest is worked out from it.
 */
public final class StateFile {

    private final Desk desk = new Desk();

    private StateFile() {}

    /** A file that is not there yet is a shop of which nothing is known. */
    public static Read<ShopKnowledge> read(Path path) {
        if (Files.notExists(path)) {
            return new Read<>(Optional.of(ShopKnowledge.NOTHING), List.of(), List.of());
        }
        Read<TextFile> file = TextFile.read(path);
        return file.value()
                .map(f -> new StateFile().read(f))
                .orElseGet(() -> Read.failed(file.problems().toArray(Problem[]::new)));
    }

    public static Read<ShopKnowledge> read(String name, String text) {
        return new StateFile().read(TextFile.of(name, text));
    }

    private Read<ShopKnowledge> read(TextFile file) {
        Read<YamlNode> tree = YamlTree.read(file);
        tree.problems().forEach(desk::problem);
        ShopKnowledge knowledge = tree.value()
                .map(root -> new Section("state", "", root, desk))
                .filter(Section::isGroup)
                .map(this::knowledge)
                .orElse(ShopKnowledge.NOTHING);
        return new Read<>(desk.clean() ? Optional.of(knowledge) : Optional.empty(), desk.problems(), desk.notes());
    }

    private ShopKnowledge knowledge(Section root) {
        ShopKnowledge knowledge = ShopKnowledge.NOTHING;
        for (Section section : root.groups("learned")) {
            Optional<Subject> subject = subject(section);
            for (Section one : section.groups("told")) {
                Optional<Told> told = subject.flatMap(s -> told(one, s.influence()));
                if (told.isPresent()) {
                    knowledge = knowledge
                            .with(subject.orElseThrow(), told.get())
                            .value()
                            .orElse(knowledge);
                }
            }
        }
        return knowledge;
    }

    private Optional<Subject> subject(Section section) {
        List<String> known = new ArrayList<>();
        for (Influence influence : Influence.values()) {
            if (ShopKnowledge.learnable(influence)) {
                known.add(influence.key());
            }
        }
        Optional<Influence> influence = section.scalar("property")
                .flatMap(s -> section.convert(
                        s,
                        t -> Influence.of(t).filter(ShopKnowledge::learnable),
                        String.join(", ", known),
                        none -> Optional.empty()));
        Optional<String> thing = section.text("thing");
        return influence.flatMap(i -> thing.map(t -> new Subject(i, t)));
    }

    private Optional<Told> told(Section section, Influence influence) {
        Optional<Double> value = number(section, "value", influence);
        Optional<Double> low = number(section, "low", influence);
        Optional<Double> high = number(section, "high", influence);
        double common =
                section.has("common") ? number(section, "common", influence).orElse(0.0) : 0;
        String from = section.text("from").orElse("");
        if (value.isEmpty() || low.isEmpty() || high.isEmpty()) {
            return Optional.empty();
        }
        boolean ordered =
                common >= 0 && low.get() <= value.get() && value.get() <= high.get() && low.get() < high.get();
        if (!ordered
                || !within(influence, low.get())
                || !within(influence, high.get())
                || !within(influence, value.get() + common)) {
            desk.problem(
                    section.place(),
                    "low, value, high",
                    "low below value below high, and all of them possible",
                    "Mend the numbers, or take this entry out and learn from the log again.");
            return Optional.empty();
        }
        return Optional.of(new Told(value.get(), low.get(), high.get(), common, from));
    }

    /** A gap is greater than nothing, a share lies between nothing and all. */
    private static boolean within(Influence influence, double value) {
        return Double.isFinite(Priors.usual().of(influence).kind().scaled(value));
    }

    private Optional<Double> number(Section section, String key, Influence influence) {
        Dimension dimension = ShopKnowledge.dimension(influence);
        double most = Expectation.of(dimension, desk.units()).range().high();
        Expectation expected = Expectation.of(dimension, desk.units())
                .within(new Band(dimension, -most, most))
                .bare(unit(dimension));
        return section.scalar(key).flatMap(s -> {
            Reading<Quantity> reading = QuantityReader.quantity(s.text(), expected);
            if (reading instanceof Reading.Fault<Quantity> fault) {
                desk.problem(fault.at(s.place()));
            }
            return reading.found().map(Quantity::si);
        });
    }

    private static Unit unit(Dimension dimension) {
        return Units.of(
                dimension,
                switch (dimension) {
                    case LENGTH -> "µm";
                    case TEMPERATURE_DIFFERENCE -> "K";
                    case HARDNESS -> "HRC";
                    default -> "1";
                });
    }

    /** The file's text. */
    public static String write(ShopKnowledge knowledge) {
        StringBuilder out =
                new StringBuilder("# What this shop has taught. Only what stands under  told  counts; the rest follows"
                        + " from it.\n# Take an entry out to forget it.\nlearned:");
        if (knowledge.all().isEmpty()) {
            return out.append(" []\n").toString();
        }
        out.append('\n');
        knowledge.all().forEach((subject, learned) -> write(out, knowledge, subject, learned));
        return out.toString();
    }

    private static void write(StringBuilder out, ShopKnowledge knowledge, Subject subject, Learned learned) {
        Dimension dimension = ShopKnowledge.dimension(subject.influence());
        out.append("  - thing: ").append(quoted(subject.device())).append('\n');
        out.append("    property: ").append(subject.influence().key()).append('\n');
        knowledge.next(subject).ifPresent(next -> next(out, dimension, next));
        out.append("    jobs: ").append(learned.jobs()).append("\n    told:\n");
        for (Told told : learned.told()) {
            out.append("      - {from: ").append(quoted(told.from()));
            out.append(", value: ").append(number(dimension, told.value()));
            out.append(", low: ").append(number(dimension, told.low()));
            out.append(", high: ").append(number(dimension, told.high()));
            if (told.common() > 0) {
                out.append(", common: ").append(number(dimension, told.common()));
            }
            out.append("}\n");
        }
    }

    private static void next(StringBuilder out, Dimension dimension, Estimate next) {
        out.append("    value: ").append(number(dimension, next.value())).append('\n');
        out.append("    low: ").append(number(dimension, next.low())).append('\n');
        out.append("    high: ").append(number(dimension, next.high())).append('\n');
        out.append("    standing: ")
                .append(next.bases().first().standing().word())
                .append('\n');
    }

    private static String number(Dimension dimension, double si) {
        Unit unit = unit(dimension);
        String number = Numbers.show(unit.fromSi(si));
        return unit.symbol().equals("1") ? number : number + " " + unit.symbol();
    }

    private static String quoted(String text) {
        StringBuilder out = new StringBuilder("\"");
        text.codePoints().filter(c -> !Character.isISOControl(c)).forEach(c -> {
            if (c == '"' || c == '\\') {
                out.append('\\');
            }
            out.appendCodePoint(c);
        });
        return out.append('"').toString();
    }
}
