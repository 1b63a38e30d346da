package org.strawblue.app.json;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.function.Function;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.estimate.Finding;
import org.strawblue.core.quantity.Amount;
import org.strawblue.core.quantity.Band;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Phrase;
import org.strawblue.core.quantity.Quantity;
import org.strawblue.core.source.Basis;
import org.strawblue.core.source.Bibliography;
import org.strawblue.core.source.Source;
import org.strawblue.core.source.Standing;

/** Writes what answers and cards have in common, and at the end the sources it met. */
final class JsonText {

    /** Writes one piece. */
    interface Piece {
        void write() throws IOException;
    }

    private final StringWriter text = new StringWriter();
    private final JsonGenerator json;
    private final JsonUnits units;
    private final Function<Amount, String> words;
    private final Map<String, Source> met = new TreeMap<>();

    JsonText(JsonUnits units, Function<Amount, String> words) {
        this.units = units;
        this.words = words;
        try {
            DefaultPrettyPrinter printer =
                    new DefaultPrettyPrinter().withObjectIndenter(new DefaultIndenter("  ", "\n"));
            json = new JsonFactory().createGenerator(text).setPrettyPrinter(printer);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The whole text: one object of these pieces, then the sources. */
    String object(Piece pieces) {
        try {
            json.writeStartObject();
            pieces.write();
            sources();
            json.writeEndObject();
            json.close();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.append('\n').toString();
    }

    void text(String name, String value) throws IOException {
        json.writeStringField(name, value);
    }

    void text(String name, Phrase phrase) throws IOException {
        json.writeStringField(name, phrase.write(words));
    }

    void flag(String name, boolean value) throws IOException {
        json.writeBooleanField(name, value);
    }

    void inner(String name, Piece piece) throws IOException {
        json.writeObjectFieldStart(name);
        piece.write();
        json.writeEndObject();
    }

    <T> void list(String name, List<T> items, Item<T> item) throws IOException {
        json.writeArrayFieldStart(name);
        for (T each : items) {
            json.writeStartObject();
            item.write(each);
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    /** Writes the fields of one thing in a list. */
    interface Item<T> {
        void write(T item) throws IOException;
    }

    void texts(String name, List<Phrase> phrases) throws IOException {
        json.writeArrayFieldStart(name);
        for (Phrase phrase : phrases) {
            json.writeString(phrase.write(words));
        }
        json.writeEndArray();
    }

    /** The fields of a number with its interval. */
    void estimate(Estimate e) throws IOException {
        number("value", e.dimension(), e.value());
        number("low", e.dimension(), e.low());
        number("high", e.dimension(), e.high());
        unit(e.dimension());
        bases(e.bases());
    }

    void quantity(Quantity q) throws IOException {
        number("value", q.dimension(), q.si());
        unit(q.dimension());
    }

    void band(Band b) throws IOException {
        number("low", b.dimension(), b.low());
        number("high", b.dimension(), b.high());
        unit(b.dimension());
    }

    private void unit(Dimension dimension) throws IOException {
        json.writeStringField("unit", units.of(dimension).symbol());
    }

    private void number(String name, Dimension dimension, double si) throws IOException {
        double value = units.value(dimension, si);
        if (Double.isFinite(value)) {
            json.writeNumberField(name, value);
        } else {
            json.writeNullField(name);
        }
    }

    private void bases(SortedSet<Basis> bases) throws IOException {
        json.writeArrayFieldStart("sources");
        for (String key : bases.stream().map(Basis::source).distinct().sorted().toList()) {
            json.writeString(key);
            Bibliography.find(key).ifPresent(s -> met.put(key, s));
        }
        json.writeEndArray();
        Optional<Standing> weakest = bases.stream().map(Basis::standing).max(Standing::compareTo);
        json.writeStringField("standing", weakest.map(Standing::word).orElse("given"));
    }

    void findings(List<Finding> findings) throws IOException {
        list("findings", findings, f -> {
            text("kind", kind(f));
            text("what", f.what());
            text("why", f.why());
            text("remedy", f.remedy());
        });
    }

    private static String kind(Finding finding) {
        if (finding instanceof Finding.Stop) {
            return "stop";
        }
        return finding instanceof Finding.Caution ? "caution" : "note";
    }

    private void sources() throws IOException {
        inner("sources", () -> {
            for (Source source : met.values()) {
                inner(source.key(), () -> {
                    text("title", source.title());
                    text("address", source.address());
                });
            }
        });
    }
}
