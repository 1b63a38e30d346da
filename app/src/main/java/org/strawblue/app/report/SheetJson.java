package org.strawblue.app.report;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.Locale;
import org.strawblue.app.service.Entry;
import org.strawblue.app.service.Sheet;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.estimate.Finding;
import org.strawblue.core.job.Picture;
import org.strawblue.core.job.UnitSystem;
import org.strawblue.core.quantity.Dimension;

/** The answer to one question for programs: every number as value, low, high, unit and what it rests on. */
public final class SheetJson {

    private final JsonGenerator json;
    private final AmountWriter writer;
    private final JsonAmounts amounts;

    private SheetJson(JsonGenerator json, UnitSystem system) {
        this.json = json;
        this.writer = new AmountWriter(system);
        this.amounts = new JsonAmounts(json, system);
    }

    public static String write(Sheet sheet, UnitSystem system) {
        StringWriter text = new StringWriter();
        try (JsonGenerator json = new JsonFactory().createGenerator(text)) {
            json.useDefaultPrettyPrinter();
            json.configure(JsonGenerator.Feature.WRITE_BIGDECIMAL_AS_PLAIN, true);
            new SheetJson(json, system).sheet(sheet);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.append('\n').toString();
    }

    private void sheet(Sheet sheet) throws IOException {
        json.writeStartObject();
        json.writeStringField("title", sheet.title());
        json.writeBooleanField("refused", sheet.refused());
        json.writeObjectFieldStart("answer");
        for (Entry entry : sheet.entries()) {
            json.writeObjectFieldStart(entry.key());
            json.writeStringField("label", entry.label());
            value(entry);
            json.writeEndObject();
        }
        json.writeEndObject();
        json.writeArrayFieldStart("findings");
        for (Finding finding : sheet.findings()) {
            finding(finding);
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private void value(Entry entry) throws IOException {
        if (entry instanceof Entry.Number number) {
            amounts.fields(number.estimate());
        } else if (entry instanceof Entry.Given given) {
            double si = given.quantity().si();
            amounts.fields(Estimate.of(given.quantity().dimension(), si, si, si));
        } else if (entry instanceof Entry.Limits limits) {
            amounts.fields(limits.band());
        } else if (entry instanceof Entry.Words words) {
            json.writeStringField("text", writer.write(words.phrase()));
        } else if (entry instanceof Entry.Colour colour) {
            json.writeStringField("name", colour.name());
            json.writeStringField("hex", colour.hex());
        } else if (entry instanceof Entry.Plot plot) {
            plot(plot.clock());
        }
    }

    private void plot(Picture.HeatClock clock) throws IOException {
        json.writeArrayFieldStart("places");
        for (Picture.ClockTrace trace : clock.traces()) {
            json.writeStartObject();
            json.writeStringField("place", trace.place());
            json.writeArrayFieldStart("points");
            for (Picture.ClockPoint p : trace.points()) {
                point(p);
            }
            json.writeEndArray();
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeArrayFieldStart("colours");
        for (Picture.ColourSpan span : clock.colours()) {
            json.writeStartObject();
            json.writeNumberField("from_s", tenths(span.from()));
            json.writeStringField("name", span.name());
            json.writeStringField("hex", span.hex());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private static java.math.BigDecimal tenths(double seconds) {
        return java.math.BigDecimal.valueOf(Math.round(seconds * 100), 2);
    }

    private void point(Picture.ClockPoint p) throws IOException {
        json.writeStartObject();
        json.writeNumberField("time_s", tenths(p.seconds()));
        json.writeFieldName("temperature");
        json.writeStartObject();
        amounts.fields(Estimate.of(Dimension.TEMPERATURE, p.kelvin(), p.low(), p.high()));
        json.writeEndObject();
        json.writeEndObject();
    }

    private void finding(Finding finding) throws IOException {
        json.writeStartObject();
        json.writeStringField("kind", finding.getClass().getSimpleName().toLowerCase(Locale.ROOT));
        json.writeFieldName("what");
        amounts.phrase(finding.what(), writer);
        json.writeFieldName("why");
        amounts.phrase(finding.why(), writer);
        json.writeFieldName("remedy");
        amounts.phrase(finding.remedy(), writer);
        json.writeEndObject();
    }
}
