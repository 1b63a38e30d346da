package org.strawblue.app.json;

import java.io.IOException;
import java.util.List;
import org.strawblue.app.report.AmountWriter;
import org.strawblue.app.service.Entry;
import org.strawblue.app.service.Sheet;
import org.strawblue.core.job.UnitSystem;

/** An answer as JSON. */
public final class SheetJson {

    private SheetJson() {}

    public static String of(Sheet sheet, UnitSystem system) {
        JsonText json = new JsonText(JsonUnits.of(system), new AmountWriter(system));
        return json.object(() -> {
            json.text("title", sheet.title());
            json.flag("refused", sheet.refused());
            json.inner("answer", () -> entries(json, sheet.entries()));
            json.findings(sheet.findings());
        });
    }

    private static void entries(JsonText json, List<Entry> entries) throws IOException {
        for (Entry entry : entries) {
            json.inner(entry.key(), () -> entry(json, entry));
        }
    }

    private static void entry(JsonText json, Entry entry) throws IOException {
        json.text("label", entry.label());
        if (entry instanceof Entry.Number number) {
            json.estimate(number.estimate());
        } else if (entry instanceof Entry.Limits limits) {
            json.band(limits.band());
        } else if (entry instanceof Entry.Given given) {
            json.quantity(given.quantity());
        } else if (entry instanceof Entry.Words words) {
            json.text("text", words.phrase());
        } else if (entry instanceof Entry.Colour colour) {
            json.text("name", colour.name());
            json.text("hex", colour.hex());
        }
    }
}
