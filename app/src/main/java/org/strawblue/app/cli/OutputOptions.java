package org.strawblue.app.cli;

import org.strawblue.app.report.Screen;
import org.strawblue.app.report.SheetJson;
import org.strawblue.app.report.SheetText;
import org.strawblue.app.service.Sheet;
import org.strawblue.core.job.UnitSystem;
import picocli.CommandLine.Option;

/** How an answer is to be printed. */
final class OutputOptions {

    @Option(names = "--json", description = "As JSON: each number with value, low, high, unit and sources.")
    private boolean json;

    @Option(
            names = "--units",
            paramLabel = "metric|inch",
            defaultValue = "metric",
            description = "What bare numbers mean and what is printed first: metric (default) or inch.")
    private UnitSystem units = UnitSystem.METRIC;

    boolean json() {
        return json;
    }

    UnitSystem units() {
        return units;
    }

    String print(Sheet sheet, Screen screen) {
        return json ? SheetJson.write(sheet, units) : SheetText.write(sheet, units, screen);
    }
}
