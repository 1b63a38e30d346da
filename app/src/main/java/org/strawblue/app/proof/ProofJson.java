package org.strawblue.app.proof;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;

/** The verification table as JSON. */
final class ProofJson {

    private ProofJson() {}

    static String of(Proof proof) {
        StringWriter text = new StringWriter();
        try (JsonGenerator json = new JsonFactory().createGenerator(text).useDefaultPrettyPrinter()) {
            json.writeStartObject();
            json.writeNumberField("checks", proof.checks());
            json.writeNumberField("controls", proof.controls());
            json.writeNumberField("outside_sources", proof.outsideSources().size());
            json.writeNumberField("failing", proof.failing().size());
            json.writeArrayFieldStart("verdicts");
            for (Verdict verdict : proof.verdicts()) {
                write(json, verdict);
            }
            json.writeEndArray();
            json.writeEndObject();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.append('\n').toString();
    }

    private static void write(JsonGenerator json, Verdict v) throws IOException {
        Case c = v.check();
        json.writeStartObject();
        json.writeStringField("id", c.id());
        json.writeStringField("what", c.what());
        json.writeBooleanField("control", c.control());
        json.writeBooleanField("passed", v.passed());
        json.writeStringField("ours", v.ours());
        json.writeStringField("published", ProofReport.published(c));
        json.writeStringField("unit", c.unit());
        if (v.difference().isPresent()) {
            json.writeNumberField("difference", v.difference().getAsDouble());
        }
        json.writeStringField("source", c.source());
        json.writeStringField("standing", c.standing().word());
        json.writeStringField("fault", v.fault());
        json.writeEndObject();
    }
}
