package org.strawblue.app.report;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.Locale;
import org.strawblue.core.estimate.Finding;
import org.strawblue.core.job.Figure;
import org.strawblue.core.job.Hazard;
import org.strawblue.core.job.Item;
import org.strawblue.core.job.JobCard;
import org.strawblue.core.job.Step;
import org.strawblue.core.job.UnitSystem;
import org.strawblue.core.quantity.Phrase;
import org.strawblue.core.source.Source;

/** The card for programs: every number as value, low, high, unit and what it rests on; sentences in one unit system. */
public final class CardJson {

    private final JsonGenerator json;
    private final AmountWriter writer;
    private final JsonAmounts amounts;

    private CardJson(JsonGenerator json, UnitSystem system) {
        this.json = json;
        this.writer = new AmountWriter(system);
        this.amounts = new JsonAmounts(json, system);
    }

    public static String write(JobCard card, UnitSystem system) {
        StringWriter text = new StringWriter();
        try (JsonGenerator json = new JsonFactory().createGenerator(text)) {
            json.useDefaultPrettyPrinter();
            json.configure(JsonGenerator.Feature.WRITE_BIGDECIMAL_AS_PLAIN, true);
            new CardJson(json, system).card(card);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.append('\n').toString();
    }

    private void card(JobCard card) throws IOException {
        json.writeStartObject();
        json.writeStringField("title", Text.clean(card.title()));
        json.writeBooleanField("refused", card.refused());
        phrases("summary", card.summary());
        json.writeArrayFieldStart("steps");
        for (Step step : card.steps()) {
            step(step);
        }
        json.writeEndArray();
        findings(card.findings());
        phrases("unknowns", card.unknowns());
        items(card.haveReady());
        sources(Footnotes.of(card.bases()));
        json.writeEndObject();
    }

    private void step(Step step) throws IOException {
        json.writeStartObject();
        json.writeStringField("stage", step.stage().name().toLowerCase(Locale.ROOT));
        json.writeStringField("part", Text.clean(step.part()));
        phrase("lead", step.lead());
        phrases("then", step.then());
        json.writeArrayFieldStart("figures");
        for (Figure figure : step.figures()) {
            json.writeStartObject();
            json.writeStringField("label", Text.clean(figure.label()));
            amounts.fields(figure.estimate());
            json.writeEndObject();
        }
        json.writeEndArray();
        phrases("reasons", step.reasons());
        json.writeArrayFieldStart("hazards");
        for (Hazard hazard : step.hazards()) {
            json.writeString(Text.clean(hazard.text()));
        }
        json.writeEndArray();
        findings(step.findings());
        json.writeEndObject();
    }

    private void findings(Iterable<Finding> findings) throws IOException {
        json.writeArrayFieldStart("findings");
        for (Finding finding : findings) {
            json.writeStartObject();
            json.writeStringField("kind", finding.getClass().getSimpleName().toLowerCase(Locale.ROOT));
            phrase("what", finding.what());
            phrase("why", finding.why());
            phrase("remedy", finding.remedy());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private void items(Iterable<Item> items) throws IOException {
        json.writeArrayFieldStart("have_ready");
        for (Item item : items) {
            json.writeStartObject();
            phrase("what", item.what());
            phrase("why", item.why());
            json.writeBooleanField("in_shop", item.inShop());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private void sources(Footnotes notes) throws IOException {
        json.writeArrayFieldStart("sources");
        for (Source source : notes.sources()) {
            json.writeStartObject();
            json.writeStringField("key", source.key());
            json.writeStringField("title", source.title());
            json.writeStringField("address", source.address());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private void phrases(String name, Iterable<Phrase> phrases) throws IOException {
        json.writeArrayFieldStart(name);
        for (Phrase phrase : phrases) {
            amounts.phrase(phrase, writer);
        }
        json.writeEndArray();
    }

    private void phrase(String name, Phrase phrase) throws IOException {
        json.writeFieldName(name);
        amounts.phrase(phrase, writer);
    }
}
