package org.strawblue.app.cli;

import java.io.PrintWriter;
import java.io.Writer;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.strawblue.app.report.Screen;

/**
 * Runs each command once and throws the output away, so that the launcher can record which classes they load and later
 * starts find them ready. The first argument is a folder to write into.
 */
public final class Training {

    private Training() {}

    public static void main(String[] args) {
        PrintWriter nowhere = new PrintWriter(Writer.nullWriter());
        Screen screen = Screen.detect(System.getenv(), false);
        for (List<String> line : lines(Path.of(args[0]))) {
            CommandLines.run(nowhere, nowhere, screen, line.toArray(String[]::new));
        }
    }

    private static List<List<String>> lines(Path folder) {
        Path root = Path.of(System.getProperty("strawblue.root", "."), "examples");
        // put in after the lines are cut at their spaces: a path may have some
        Map<String, String> paths = Map.of(
                "JOB", root.resolve("index-plunger.yaml").toString(),
                "DRAWER", root.resolve("drawer.csv").toString(),
                "OUT", folder.toString());
        return Stream.of(
                        "--help",
                        "plan JOB --out OUT",
                        "plan JOB --terminal-only",
                        "plan JOB --json",
                        "harden --grade O1 --diameter 8mm --length 46mm --quench oil",
                        "temper --grade O1 --hardness 58-60 --time 1h",
                        "temper --grade O1 --temperature 400F --time 1h --json",
                        "colour --temperature 480F --time 5min",
                        "spring --drawer DRAWER --rest 22mm --travel 6mm",
                        "grades O1",
                        "heat --diameter 12mm --length 60mm --on hotplate --at 290C --cover --grade W1 --target 59-61HRC",
                        "heat --side 10mm --length 60mm --start 800C --dip 25mm --on air --grade W1 --target straw --out OUT",
                        "proof")
                .map(line -> Stream.of(line.split(" "))
                        .map(word -> paths.getOrDefault(word, word))
                        .toList())
                .toList();
    }
}
