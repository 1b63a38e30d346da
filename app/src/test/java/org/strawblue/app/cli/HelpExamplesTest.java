package org.strawblue.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a command's help shows is done as it stands there, and fits a terminal of 80 columns. */
class HelpExamplesTest {

    private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"|(\\S+)");

    @TempDir
    private Path folder;

    @ParameterizedTest
    @ValueSource(strings = {"diagnose", "learn", "judge", "heat"})
    void everyExampleIsAnswered(String command) {
        String help = Shell.run(command, "--help").out();
        assertThat(help.lines()).allMatch(l -> l.length() <= 80);
        List<String> examples = help.replaceAll("\\\\\\R\\s*", "")
                .lines()
                .filter(l -> l.startsWith("  strawblue "))
                .toList();
        assertThat(examples).hasSizeGreaterThan(2);
        for (String example : examples) {
            Shell shell = Shell.run(words(example.strip().substring("strawblue ".length())));
            assertThat(shell.code()).as(example + "\n" + shell.err()).isZero();
            assertThat(shell.out()).isNotBlank();
        }
    }

    private String[] words(String line) {
        List<String> words = new ArrayList<>();
        Matcher matcher = WORD.matcher(line);
        while (matcher.find()) {
            String word = matcher.group(1) == null ? matcher.group(2) : matcher.group(1);
            words.add(
                    word.startsWith("examples/")
                            ? "../" + word
                            : word.replace(
                                            "shop.yaml",
                                            folder.resolve("shop.yaml").toString())
                                    .replace(
                                            "heat-of-the-flat",
                                            folder.resolve("heat").toString()));
        }
        return words.toArray(String[]::new);
    }
}
