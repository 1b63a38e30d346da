package org.strawblue.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.LongStream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Whatever part is put on whatever heat, or whatever a logger wrote: an answer, or a reason with its limits; never a fault. */
class AnyHeatTest {

    private static final String[] SOURCES = {
        "hotplate", "kitchenoven", "fanoven", "toasteroven", "kiln", "torch", "sandtray", "water", "oil", "air", "forge"
    };
    private static final String[] TARGETS = {"58-60HRC", "straw", "purple..blue", "40HRC", "grey", "66HRC", "bright"};
    private static final String[] GRADES = {"O1", "W1", "1095", "D2", "A2"};
    private static final Pattern TEMPERATURE = Pattern.compile(
            "\"temperature\" : \\{\\s*\"value\" : ([-0-9.]+),\\s*\"low\" : ([-0-9.]+),\\s*\"high\" : ([-0-9.]+)");

    @TempDir
    private Path folder;

    static LongStream heats() {
        return LongStream.range(0, 40);
    }

    static LongStream logs() {
        return LongStream.range(0, 40);
    }

    @ParameterizedTest
    @MethodSource("heats")
    void anyHeat(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        List<String> line = new ArrayList<>(List.of("heat", "--json"));
        shape(random, line);
        int at = random.nextInt(10) == 0 ? random.nextInt(-200, 2500) : random.nextInt(20, 900);
        int start = random.nextInt(4) == 0 ? random.nextInt(-150, 1500) : 20;
        line.addAll(List.of("--on", SOURCES[random.nextInt(SOURCES.length)], "--at", at + "C", "--start", start + "C"));
        options(random, line);
        holds(Shell.run(line.toArray(String[]::new)), line);
    }

    private static void shape(SplittableRandom random, List<String> line) {
        String size = size(random);
        switch (random.nextInt(5)) {
            case 0 -> line.addAll(List.of("--diameter", size));
            case 1 -> line.addAll(List.of("--side", size));
            case 2 -> line.addAll(List.of("--thickness", size, "--width", size(random)));
            case 3 -> line.addAll(List.of("--outside", size, "--bore", size(random)));
            default ->
                line.addAll(List.of("--pieces", size + "x" + size(random) + "," + size(random) + "x" + size(random)));
        }
        if (random.nextBoolean()) {
            line.addAll(List.of("--length", size(random)));
        }
    }

    /** Mostly what a small shop has, now and then a hair or a girder. */
    private static String size(SplittableRandom random) {
        double mm = random.nextInt(8) == 0 ? Math.pow(10, random.nextDouble(-2, 3.5)) : random.nextDouble(2, 40);
        return String.format(Locale.ROOT, "%.3fmm", mm);
    }

    private static void options(SplittableRandom random, List<String> line) {
        if (random.nextBoolean()) {
            line.addAll(List.of("--grade", GRADES[random.nextInt(GRADES.length)]));
        }
        if (random.nextInt(3) == 0) {
            line.addAll(List.of("--target", TARGETS[random.nextInt(TARGETS.length)]));
        }
        if (random.nextInt(4) != 0) {
            line.addAll(List.of("--for", (int) Math.pow(10, random.nextDouble(-0.5, 5.5)) + "s"));
        }
        if (random.nextInt(3) == 0) {
            line.add("--cover");
        }
        if (random.nextInt(4) == 0) {
            line.addAll(List.of("--then-air", random.nextInt(1, 600) + "s"));
        }
        if (random.nextInt(6) == 0) {
            line.addAll(List.of("--stop", random.nextBoolean() ? "water" : "oil"));
        }
        if (random.nextInt(6) == 0) {
            line.addAll(List.of("--dip", size(random), "--dip-for", random.nextInt(1, 20) + "s"));
        }
        if (random.nextInt(6) == 0) {
            line.addAll(List.of("--flame-length", size(random)));
        }
        if (random.nextInt(4) == 0) {
            line.addAll(List.of("--emissivity", String.format(Locale.ROOT, "%.2f", random.nextDouble(-0.1, 1.2))));
        }
    }

    @ParameterizedTest
    @MethodSource("logs")
    void anyLog(long seed) throws IOException {
        SplittableRandom random = new SplittableRandom(seed + 1000);
        Path file = Files.writeString(folder.resolve("log.csv"), log(random));
        String of = List.of("part", "oven", "plate").get(random.nextInt(3));
        List<String> line = new ArrayList<>(
                List.of("heat", "--json", "--log", file.toString(), "--log-of", of, "--diameter", size(random)));
        if (random.nextBoolean()) {
            line.addAll(List.of("--grade", "O1"));
        }
        if (random.nextInt(4) == 0) {
            line.addAll(List.of("--target", TARGETS[random.nextInt(TARGETS.length)]));
        }
        if (random.nextInt(4) == 0) {
            line.addAll(List.of("--for", random.nextInt(1, 20_000) + "s"));
        }
        holds(Shell.run(line.toArray(String[]::new)), line);
    }

    /** A rise and a hold, with what loggers do to it. */
    private static String log(SplittableRandom random) {
        String[] heads = {"time_s,temp_C", "Time (min);T [F]", "t\ttemperature", "clock,oven C", "elapsed s,reading"};
        int form = random.nextInt(heads.length);
        char cut = form == 1 ? ';' : form == 2 ? '\t' : ',';
        StringBuilder text = new StringBuilder(random.nextInt(10) == 0 ? "" : heads[form] + "\n");
        int rows = random.nextInt(10) == 0 ? random.nextInt(3) : random.nextInt(20, 200);
        double step = Math.pow(10, random.nextDouble(-1, 3));
        double end = random.nextInt(8) == 0 ? random.nextDouble(1000, 4000) : random.nextDouble(100, 500);
        double t = 0;
        for (int i = 0; i < rows; i++) {
            t += random.nextInt(30) == 0 ? step * random.nextDouble(10, 200) : step;
            double time = random.nextInt(20) == 0 ? t - 3 * step : t;
            double temperature = 20 + (end - 20) * (1 - Math.exp(-4.0 * i / rows));
            text.append(time(random, form, time))
                    .append(cut)
                    .append(reading(random, temperature))
                    .append('\n');
        }
        return text.toString();
    }

    private static String time(SplittableRandom random, int form, double seconds) {
        if (form == 3) {
            long s = Math.max(0, Math.round(seconds)) % 86_400;
            return String.format(Locale.ROOT, "%02d:%02d:%02d", s / 3600, s / 60 % 60, s % 60);
        }
        return random.nextInt(60) == 0 ? "" : String.format(Locale.ROOT, "%.1f", seconds);
    }

    private static String reading(SplittableRandom random, double celsius) {
        return switch (random.nextInt(40)) {
            case 0 -> "NaN";
            case 1 -> "";
            case 2 -> "9999";
            case 3 -> "-300";
            case 4 -> String.format(Locale.ROOT, "%.1f F", celsius * 1.8 + 32);
            case 5 -> "don't know";
            default -> String.format(Locale.ROOT, "%.1f", celsius);
        };
    }

    private static void holds(Shell shell, List<String> line) {
        assertThat(shell.code())
                .as(() -> String.join(" ", line) + "\n" + shell.err())
                .isIn(ExitCode.FINE, ExitCode.REFUSED, ExitCode.BAD_INPUT);
        if (shell.code() == ExitCode.BAD_INPUT) {
            assertThat(shell.err()).isNotBlank();
            return;
        }
        assertThat(shell.out().contains("\"stop\"")).isEqualTo(shell.code() == ExitCode.REFUSED);
        Matcher matcher = TEMPERATURE.matcher(shell.out());
        while (matcher.find()) {
            double value = Double.parseDouble(matcher.group(1));
            assertThat(value)
                    .isBetween(Double.parseDouble(matcher.group(2)), Double.parseDouble(matcher.group(3)))
                    .isBetween(-100.0, 3300.0);
        }
    }
}
