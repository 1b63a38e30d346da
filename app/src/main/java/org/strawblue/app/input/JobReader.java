package org.strawblue.app.input;

import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.strawblue.core.colour.Light;
import org.strawblue.core.job.AssemblyWish;
import org.strawblue.core.job.Job;
import org.strawblue.core.job.PocketWish;
import org.strawblue.core.job.Shop;
import org.strawblue.core.job.UnitSystem;
import org.strawblue.core.job.WorkPiece;
import org.strawblue.core.spring.MeasuredSpring;

/** Reads a job file: either a job, or every problem in it at once. Never throws. */
public final class JobReader {

    private final TextFile file;
    private final Desk desk = new Desk();

    private JobReader(TextFile file) {
        this.file = file;
    }

    /** Reads a file, and the drawer file it names beside it. */
    public static Read<Job> read(Path path) {
        Read<TextFile> file = TextFile.read(path);
        if (file.value().isEmpty()) {
            return Read.failed(file.problems().toArray(Problem[]::new));
        }
        JobReader reader = new JobReader(file.value().get());
        file.notes().forEach(reader.desk::note);
        return reader.job(Optional.of(path));
    }

    /** Reads a text that came without a file; a drawer that it names is not looked for. */
    public static Read<Job> read(String name, String text) {
        return new JobReader(TextFile.of(name, text)).job(Optional.empty());
    }

    private Read<Job> job(Optional<Path> path) {
        Read<YamlNode> tree = YamlTree.read(file);
        tree.problems().forEach(desk::problem);
        Optional<Job> job = tree.value()
                .map(root -> new Section("job", "", root, desk))
                .filter(Section::isGroup)
                .map(root -> job(root, path));
        return new Read<>(desk.clean() ? job : Optional.empty(), desk.problems(), desk.notes());
    }

    private Job job(Section root, Optional<Path> path) {
        desk.units(units(root));
        Optional<Section> shopSection = root.group("shop");
        Optional<List<MeasuredSpring>> drawer = shopSection.flatMap(s -> drawer(s, path));
        Shop shop = shopSection.map(s -> new ShopReading(s).shop(drawer)).orElse(Shop.UNTOLD);
        List<WorkPiece> parts = root.groups("parts").stream()
                .map(s -> new PartReading(s, shop).piece())
                .toList();
        List<PocketWish> pockets = root.groups("pockets").stream()
                .flatMap(s -> new PocketReading(s).wish().stream())
                .toList();
        if (!root.has("parts") && !root.has("pockets")) {
            desk.problem(
                    root.place(),
                    "neither parts nor pockets",
                    "parts: a list of the parts to be made",
                    "Add the part this job is about.");
        }
        once(root, parts);
        AssemblyWish assembly = root.group("assembly")
                .map(s -> new AssemblyReading(s, parts).wish())
                .orElse(AssemblyWish.NONE);
        return new Job(
                root.text("title").orElse(""),
                desk.units(),
                light(root),
                parts,
                pockets,
                assembly,
                shop,
                desk.unknowns(),
                desk.findings());
    }

    private UnitSystem units(Section root) {
        Optional<String> word = root.word("units");
        if (!root.has("units")) {
            desk.note("The job does not say its units: a number without a unit was read as metric.");
        }
        return word.filter("inch"::equals).map(w -> UnitSystem.INCH).orElse(UnitSystem.METRIC);
    }

    private Light light(Section root) {
        String words = String.join(
                ", ", List.of(Light.values()).stream().map(Light::word).toList());
        return root.scalar("light")
                .flatMap(s -> root.convert(s, Light::find, words, none -> Optional.empty()))
                .orElse(Light.DAYLIGHT);
    }

    /** Two parts of one name could not be told apart on the card. */
    private void once(Section root, List<WorkPiece> parts) {
        Set<String> names = new HashSet<>();
        for (WorkPiece part : parts) {
            if (!names.add(part.name())) {
                desk.problem(
                        root.place("parts"),
                        part.name(),
                        "a different name for each part",
                        "Two parts are called so: rename one.");
            }
        }
    }

    private Optional<List<MeasuredSpring>> drawer(Section shop, Optional<Path> path) {
        Optional<String> named = shop.text("drawer");
        if (named.isEmpty() || path.isEmpty()) {
            return Optional.empty();
        }
        Path folder = Optional.ofNullable(path.get().getParent()).orElse(Path.of(""));
        try {
            Read<Drawer> read = DrawerReader.read(folder.resolve(named.get()), desk.units());
            read.problems().forEach(desk::problem);
            read.notes().forEach(desk::note);
            read.value().ifPresent(d -> d.unknowns().forEach(u -> desk.unknown(u.path(), u.what())));
            return read.value().map(Drawer::springs);
        } catch (java.nio.file.InvalidPathException e) {
            desk.problem(
                    shop.place("drawer"),
                    named.get(),
                    "the name of a file beside the job file",
                    "Take the special signs out of the name.");
            return Optional.empty();
        }
    }
}
