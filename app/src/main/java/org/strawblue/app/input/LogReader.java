package org.strawblue.app.input;

import de.siegmar.fastcsv.reader.CsvRecord;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.strawblue.core.colour.Light;
import org.strawblue.core.evidence.advice.Costs;
import org.strawblue.core.evidence.observe.Observation;
import org.strawblue.core.evidence.sample.Settings;
import org.strawblue.core.heat.HeatThrough;
import org.strawblue.core.heat.course.Setting;
import org.strawblue.core.heat.course.Spell;
import org.strawblue.core.job.HeatLog;
import org.strawblue.core.job.Shop;
import org.strawblue.core.job.UnitSystem;
import org.strawblue.core.job.WorkPiece;

/**
 * Reads a log of what was seen of one heat: YAML, with the part and the heat, or a CSV table with a row for each look and the
 * keys of a look as its heads. Either a log, or every problem in it at once. Never throws.
 */
public final class LogReader {

    private final TextFile file;
    private final Desk desk = new Desk();

    private LogReader(TextFile file) {
        this.file = file;
    }

    public static Read<HeatLog> read(Path path) {
        Read<TextFile> file = TextFile.read(path);
        if (file.value().isEmpty()) {
            return Read.failed(file.problems().toArray(Problem[]::new));
        }
        LogReader reader = new LogReader(file.value().get());
        file.notes().forEach(reader.desk::note);
        return reader.log();
    }

    /** @param name ends in .csv for a table */
    public static Read<HeatLog> read(String name, String text) {
        return new LogReader(TextFile.of(name, text)).log();
    }

    private Read<HeatLog> log() {
        boolean table = file.name().toLowerCase(Locale.ROOT).endsWith(".csv");
        Optional<YamlNode> root = table ? Optional.of(table()) : yaml();
        Optional<HeatLog> log = root.map(LogReader::named)
                .map(r -> new Section("log", "", r, desk))
                .filter(Section::isGroup)
                .map(this::log);
        return new Read<>(desk.clean() ? log : Optional.empty(), desk.problems(), desk.notes());
    }

    /** A log is of one part, which needs no name to be told from others. */
    private static YamlNode named(YamlNode root) {
        return root instanceof YamlNode.MapNode map
                ? new YamlNode.MapNode(
                        map.entries().stream().map(LogReader::named).toList(), map.place())
                : root;
    }

    private static YamlNode.Entry named(YamlNode.Entry entry) {
        boolean part = entry.key().text().strip().equalsIgnoreCase("part");
        if (!part || !(entry.value() instanceof YamlNode.MapNode map)) {
            return entry;
        }
        boolean name =
                map.entries().stream().anyMatch(e -> e.key().text().strip().equalsIgnoreCase("name"));
        List<YamlNode.Entry> entries = new ArrayList<>(map.entries());
        if (!name) {
            entries.add(new YamlNode.Entry(
                    new YamlNode.Scalar("name", map.place()), new YamlNode.Scalar("part", map.place())));
        }
        return new YamlNode.Entry(entry.key(), new YamlNode.MapNode(entries, map.place()));
    }

    private Optional<YamlNode> yaml() {
        Read<YamlNode> tree = YamlTree.read(file);
        tree.problems().forEach(desk::problem);
        return tree.value();
    }

    /** Each row as the group of keys it would be in YAML; empty cells say nothing. */
    private YamlNode table() {
        Sheet sheet = new Sheet(file);
        Optional<CsvRecord> head = sheet.next();
        List<YamlNode> rows = new ArrayList<>();
        for (Optional<CsvRecord> row = sheet.next(); head.isPresent() && row.isPresent(); row = sheet.next()) {
            rows.add(row(sheet, head.get(), row.get()));
        }
        sheet.broken().ifPresent(desk::problem);
        Place top = Place.of(file.name());
        return new YamlNode.MapNode(
                List.of(new YamlNode.Entry(new YamlNode.Scalar("observations", top), new YamlNode.ListNode(rows, top))),
                top);
    }

    private YamlNode row(Sheet sheet, CsvRecord head, CsvRecord row) {
        List<YamlNode.Entry> entries = new ArrayList<>();
        Place first = sheet.place(row, 0);
        for (int i = 0; i < Math.min(head.getFieldCount(), row.getFieldCount()); i++) {
            if (!row.getField(i).isBlank()) {
                Place place = sheet.place(row, i);
                entries.add(new YamlNode.Entry(
                        new YamlNode.Scalar(head.getField(i).strip(), sheet.place(head, i)),
                        new YamlNode.Scalar(row.getField(i).strip(), place)));
            }
        }
        return new YamlNode.MapNode(entries, first);
    }

    private HeatLog log(Section root) {
        desk.units(root.word("units").filter("inch"::equals).isPresent() ? UnitSystem.INCH : UnitSystem.METRIC);
        Light light = root.scalar("light").flatMap(s -> light(root, s)).orElse(Light.DAYLIGHT);
        Optional<WorkPiece> part = root.group("part").map(s -> new PartReading(s, Shop.UNTOLD).piece());
        List<Spell> heat = heat(root.groups("heat"));
        if (!heat.isEmpty() && part.flatMap(WorkPiece::shape).isEmpty()) {
            desk.problem(
                    root.place("heat"),
                    "a heat",
                    "part: with its shape and size, for that heat",
                    "Add the part, or leave the heat out: then the looks alone are weighed.");
        }
        List<Observation> seen = root.groups("observations").stream()
                .flatMap(s -> new LookReading(s, light).observation().stream())
                .toList();
        return new HeatLog(
                root.text("title").orElse("What was seen"),
                desk.units(),
                part,
                heat,
                seen,
                root.group("costs").map(LogReader::costs).orElse(Costs.usual()));
    }

    static Optional<Light> light(Section section, YamlNode.Scalar scalar) {
        String words = String.join(
                ", ", List.of(Light.values()).stream().map(Light::word).toList());
        return section.convert(scalar, Light::find, words, none -> Optional.empty());
    }

    private static Costs costs(Section s) {
        Costs usual = Costs.usual();
        return new Costs(
                s.si("too soft").orElse(usual.soft()),
                s.si("too hard").orElse(usual.hard()),
                s.si("temper again").orElse(usual.temperAgain()),
                s.si("harden again").orElse(usual.hardenAgain()),
                s.si("look").orElse(usual.look()));
    }

    /** A heat of which a piece is not known cannot be followed: then the looks must tell alone. */
    private List<Spell> heat(List<Section> pieces) {
        boolean known = pieces.stream()
                .noneMatch(s -> Stream.of("on", "temperature", "time").anyMatch(s::scalarNotKnown));
        if (known) {
            return pieces.stream().flatMap(s -> spell(s).stream()).toList();
        }
        desk.note(
                "Not all of the heat is known, so the looks alone are weighed; a guess of it would narrow the answer.");
        return List.of();
    }

    private Optional<Spell> spell(Section s) {
        Optional<Double> time = s.si("time");
        return s.scalar("on").flatMap(on -> setting(s, on)).flatMap(setting -> time.map(t -> new Spell(setting, t)));
    }

    private Optional<Setting> setting(Section s, YamlNode.Scalar on) {
        HeatThrough.Surface surface =
                s.word("surface").filter("oxidised"::equals).isPresent()
                        ? HeatThrough.Surface.OXIDISED
                        : HeatThrough.Surface.BRIGHT;
        Settings.Stated stated = new Settings.Stated(
                PartReading.optional(s.si("temperature")),
                PartReading.optional(s.si("gap")),
                Settings.emissivity(surface),
                s.word("cover").filter("yes"::equals).isPresent());
        return Named.find(on, word -> Settings.named(word, stated), "a heat source, a quench, or air", desk);
    }
}
