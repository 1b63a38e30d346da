package org.strawblue.core.oxide;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.strawblue.core.estimate.Finding;
import org.strawblue.core.estimate.Validity;
import org.strawblue.core.quantity.Band;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.table.Row;
import org.strawblue.core.table.Table;

/** Where the growth law may be asked, from {@code limits.csv}. */
final class Limits {

    private static final String LAW = "The growth law of the film";
    static final Validity TEMPERATURE =
            new Validity(LAW, "a temperature", band("peak_temperature", Dimension.TEMPERATURE));
    static final Validity TIME = new Validity(LAW, "a time", band("time", Dimension.TIME));
    static final double MOST_CHROMIUM = row("chromium").number("high");

    private Limits() {}

    /** Stops for whatever lies outside: peak temperature [K], time [s], chromium [mass %]. */
    static List<Finding> check(double peak, double seconds, double chromium) {
        return Stream.of(TEMPERATURE.check(peak), TIME.check(seconds), chromium(chromium))
                .flatMap(Optional::stream)
                .toList();
    }

    static List<Finding> check(double seconds, double chromium) {
        return check(TEMPERATURE.range().middle(), seconds, chromium);
    }

    private static Optional<Finding> chromium(double chromium) {
        return chromium <= MOST_CHROMIUM
                ? Optional.empty()
                : Optional.of(ChromiumEffect.refusal(chromium, MOST_CHROMIUM));
    }

    private static Band band(String quantity, Dimension dimension) {
        return new Band(dimension, row(quantity).number("low"), row(quantity).number("high"));
    }

    private static Row row(String quantity) {
        return Table.of(Limits.class, "limits.csv").rows().stream()
                .filter(r -> r.text("quantity").equals(quantity))
                .findFirst()
                .orElseThrow();
    }
}
