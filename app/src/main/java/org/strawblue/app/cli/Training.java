package org.strawblue.app.cli;

import java.io.PrintWriter;
import java.io.Writer;
import java.nio.file.Path;
import java.util.List;
import org.strawblue.app.report.Screen;

/**
 * Runs each command once and throws the output away, so that the launcher can record which classes they load and later
 * starts find them ready. The first argument is a folder to write into.
 */
public final class Training {

    private static final int COLUMNS = 80;

    private Training() {}

    public static void main(String[] args) {
        PrintWriter nowhere = new PrintWriter(Writer.nullWriter());
        for (List<String> line : lines(Path.of(args[0]))) {
            CommandLines.of(nowhere, nowhere, Screen.plain(COLUMNS)).execute(line.toArray(String[]::new));
        }
    }

    private static List<List<String>> lines(Path folder) {
        String example = Path.of(System.getProperty("strawblue.root", "."), "examples", "index-plunger.yaml")
                .toString();
        return List.of(
                List.of("--help"),
                List.of("plan", example, "--out", folder.toString()),
                List.of("plan", example, "--terminal-only"),
                List.of("proof"));
    }
}
