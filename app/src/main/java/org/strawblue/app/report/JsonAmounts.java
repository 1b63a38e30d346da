package org.strawblue.app.report;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.MathContext;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.job.UnitSystem;
import org.strawblue.core.quantity.Amount;
import org.strawblue.core.quantity.Band;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Phrase;
import org.strawblue.core.quantity.Quantity;
import org.strawblue.core.quantity.Unit;
import org.strawblue.core.quantity.Units;
import org.strawblue.core.source.Basis;

/** Numbers in JSON: {@code value}, {@code low}, {@code high}, {@code unit}, {@code sources}. Times are in seconds. */
public record JsonAmounts(JsonGenerator json, UnitSystem system) {

    private static final MathContext FIGURES = new MathContext(7);

    /** The fields of an estimate, into an object already begun. */
    public void fields(Estimate estimate) throws IOException {
        Unit unit = unit(estimate.dimension());
        number("value", unit.fromSi(estimate.value()));
        number("low", unit.fromSi(estimate.low()));
        number("high", unit.fromSi(estimate.high()));
        json.writeStringField("unit", unit.symbol());
        json.writeArrayFieldStart("sources");
        for (Basis basis : estimate.bases()) {
            json.writeStartObject();
            json.writeStringField("what", Text.clean(basis.what()));
            json.writeStringField("source", basis.source());
            json.writeStringField("standing", basis.standing().word());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    /** A sentence: as text, and its numbers apart. */
    public void phrase(Phrase phrase, AmountWriter writer) throws IOException {
        json.writeStartObject();
        json.writeStringField("text", Text.clean(writer.write(phrase)));
        json.writeArrayFieldStart("numbers");
        for (Amount amount : phrase.amounts()) {
            json.writeStartObject();
            fields(amount);
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    /** The fields of a number that is given, not estimated, into an object already begun. */
    void fields(Amount amount) throws IOException {
        if (amount instanceof Quantity q) {
            Unit unit = unit(q.dimension());
            number("value", unit.fromSi(q.si()));
            json.writeStringField("unit", unit.symbol());
        } else if (amount instanceof Band band) {
            Unit unit = unit(band.dimension());
            number("low", unit.fromSi(band.low()));
            number("high", unit.fromSi(band.high()));
            json.writeStringField("unit", unit.symbol());
        }
    }

    /** One unit for each dimension, whatever the number's size, so that a reader need not convert. */
    private Unit unit(Dimension dimension) {
        return dimension == Dimension.TIME
                ? Units.of(dimension, dimension.si())
                : NumberStyle.of(system, dimension, 1).unit();
    }

    private void number(String name, double value) throws IOException {
        if (Double.isFinite(value)) {
            json.writeNumberField(name, new BigDecimal(value).round(FIGURES).stripTrailingZeros());
        } else {
            json.writeNullField(name);
        }
    }
}
