package org.strawblue.core.fit;

import java.util.List;
import java.util.Optional;
import org.strawblue.core.part.Feature;
import org.strawblue.core.quantity.Band;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Unit;
import org.strawblue.core.quantity.Units;
import org.strawblue.core.source.Basis;
import org.strawblue.core.source.Standing;
import org.strawblue.core.table.Row;
import org.strawblue.core.table.Table;

/**
 * What to leave on a size for finishing when hard, on the diameter or thickness, part shielded from air: {@code
 * stock.csv}.
 */
record Stock(FinishMethod method, Band band, Basis basis) {

    private static final List<Row> ROWS = Table.of(Stock.class, "stock.csv").rows();
    private static final Unit MM = Units.of(Dimension.LENGTH, "mm");

    /** By the method wished for; by lapping where the table knows no other for so small a size. */
    static Optional<Stock> of(Feature feature, FinishMethod wished) {
        Optional<Stock> first = find(feature, wished);
        return first.isPresent() ? first : find(feature, FinishMethod.LAP);
    }

    private static Optional<Stock> find(Feature feature, FinishMethod method) {
        return ROWS.stream()
                .filter(r -> r.text("kind").equals(feature.kind().name())
                        && r.text("method").equals(method.name()))
                .filter(r -> ToleranceGrades.within(r, feature.nominal()))
                .findFirst()
                .map(r -> new Stock(
                        method,
                        new Band(Dimension.LENGTH, MM.toSi(r.number("low_mm")), MM.toSi(r.number("high_mm"))),
                        new Basis("stock left for finishing", r.text("source"), Standing.of(r.text("standing")))));
    }
}
