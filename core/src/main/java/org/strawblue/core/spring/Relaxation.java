package org.strawblue.core.spring;

import java.util.List;
import org.strawblue.core.estimate.Answer;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.estimate.Validity;
import org.strawblue.core.quantity.Band;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Unit;
import org.strawblue.core.quantity.Units;
import org.strawblue.core.source.Basis;
import org.strawblue.core.source.Standing;
import org.strawblue.core.table.Row;
import org.strawblue.core.table.Table;

/**
 * ΔF/F = loss(T) · τ/τ_b: what a spring held pressed and warm for two days goes slack by.
 *
 * <p>loss(T) from {@code relaxation.csv} at the full stress τ_b it bears cold, straight between rows; τ its stress [Pa]. Each
 * wire from 20 °C to the last row of its table. Taken as in proportion to stress, which is rough. Source: one trade page for
 * music wire; the rest recalled from the standard's curves.
 */
public final class Relaxation {

    private static final Unit CELSIUS = Units.of(Dimension.TEMPERATURE, "°C");

    private Relaxation() {}

    /**
     * Share of the force that is lost [1].
     *
     * @param temperature [K]
     * @param stressShare τ/τ_b [1]
     */
    public static Answer<Estimate> loss(SpringMaterial material, double temperature, double stressShare) {
        List<Row> rows = Table.of(Relaxation.class, "relaxation.csv").rows().stream()
                .filter(r -> r.text("material").equals(material.key().name()))
                .toList();
        double first = CELSIUS.toSi(rows.get(0).number("temperature_C"));
        double last = CELSIUS.toSi(rows.get(rows.size() - 1).number("temperature_C"));
        double held = Math.max(temperature, first);
        return new Validity(
                        "Slackening of " + material.name(), "Temperature", new Band(Dimension.TEMPERATURE, first, last))
                .check(held)
                .map(Answer::<Estimate>refused)
                .orElseGet(() -> Answer.of(between(rows, CELSIUS.fromSi(held), stressShare)));
    }

    private static Estimate between(List<Row> rows, double celsius, double share) {
        int i = 1;
        while (i < rows.size() - 1 && celsius > rows.get(i).number("temperature_C")) {
            i++;
        }
        Row cool = rows.get(i - 1);
        Row warm = rows.get(i);
        double from = cool.number("temperature_C");
        double at = (celsius - from) / (warm.number("temperature_C") - from);
        double low = share * (cool.number("loss_low") + at * (warm.number("loss_low") - cool.number("loss_low")));
        double high = share * (cool.number("loss_high") + at * (warm.number("loss_high") - cool.number("loss_high")));
        Basis basis = new Basis("slackening of warm springs", warm.text("source"), Standing.of(warm.text("standing")));
        return Estimate.of(Dimension.FRACTION, (low + high) / 2, low, high, basis);
    }
}
