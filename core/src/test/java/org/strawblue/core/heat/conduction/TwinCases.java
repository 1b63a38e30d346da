package org.strawblue.core.heat.conduction;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.strawblue.core.heat.course.Course;
import org.strawblue.core.heat.course.Setting;
import org.strawblue.core.heat.course.Spell;
import org.strawblue.core.part.PartShape;
import org.strawblue.core.steel.Quenchant;
import org.strawblue.core.steel.Quenchants;

/** The cases of {@code verification/heat/cases.csv} and what the twins made of them. */
final class TwinCases {

    private static final double ZERO = 273.15;
    private static final Path FOLDER = folder();

    private TwinCases() {}

    record Case(Map<String, String> cells) {

        String id() {
            return cells.getOrDefault("id", "");
        }

        String kind() {
            return cells.getOrDefault("kind", "");
        }

        Case with(String key, String value) {
            Map<String, String> other = new HashMap<>(cells);
            other.put(key, value);
            return new Case(other);
        }

        double number(String key) {
            String text = cells.getOrDefault(key, "");
            return text.isEmpty() ? 0 : Double.parseDouble(text);
        }

        Course course() {
            double size = number("size") / 1000;
            double length = number("length") / 1000;
            PartShape shape = cells.getOrDefault("shape", "").equals("round")
                    ? new PartShape.RoundBar(size, length)
                    : new PartShape.Flat(size, number("width") / 1000, length);
            return new Course(shape, number("start") + ZERO, List.of(new Spell(setting(), number("seconds"))));
        }

        private Setting setting() {
            double around = number("temperature") + ZERO;
            if (kind().equals("plate")) {
                Setting.OnPlate plate = Setting.OnPlate.steady(
                        around, number("gap") * 1e-6, number("emissivity"), number("room_share"), 22 + ZERO);
                return number("covered") == 1 ? plate.withCover() : plate;
            }
            if (kind().equals("oven")) {
                return Setting.InOven.steady(around, number("film"), number("emissivity"));
            }
            // the film of oils is told apart by its strength, which is 1 here
            String film = cells.getOrDefault("film", "");
            Quenchant bath = Quenchants.of(film.equals("oil") ? "fast-oil" : film);
            return new Setting.InBath(bath.film(), 1, around);
        }

        /** @return rows of seconds, underside, top, core [°C] */
        List<double[]> kept(String twin) {
            List<double[]> rows = new ArrayList<>();
            for (String line : lines(FOLDER.resolve("kept").resolve(id() + "-" + twin + ".csv"))) {
                if (!line.startsWith("#") && !line.startsWith("seconds")) {
                    String[] cells = line.split(",");
                    double[] row = new double[cells.length];
                    for (int i = 0; i < row.length; i++) {
                        row[i] = Double.parseDouble(cells[i]);
                    }
                    rows.add(row);
                }
            }
            return rows;
        }

        @Override
        public String toString() {
            return id();
        }
    }

    static List<Case> all() {
        List<Case> cases = new ArrayList<>();
        String[] head = {};
        for (String line : lines(FOLDER.resolve("cases.csv"))) {
            if (line.startsWith("#")) {
                continue;
            }
            String[] cells = line.split(",", -1);
            if (head.length == 0) {
                head = cells;
                continue;
            }
            Map<String, String> row = new HashMap<>();
            for (int i = 0; i < head.length; i++) {
                row.put(head[i], cells[i]);
            }
            cases.add(new Case(row));
        }
        return cases;
    }

    private static List<String> lines(Path file) {
        try {
            return Files.readAllLines(file, StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Path folder() {
        Path here = Path.of("").toAbsolutePath();
        while (here != null && !Files.isDirectory(here.resolve("verification"))) {
            here = here.getParent();
        }
        return java.util.Objects.requireNonNull(here).resolve("verification").resolve("heat");
    }
}
