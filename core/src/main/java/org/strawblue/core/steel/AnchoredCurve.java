package org.strawblue.core.steel;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.ConcurrentHashMap;
import org.strawblue.core.estimate.Answer;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.estimate.Finding;
import org.strawblue.core.quantity.Phrase;
import org.strawblue.core.quantity.Quantity;
import org.strawblue.core.source.Basis;
import org.strawblue.core.source.Standing;
import org.strawblue.core.table.Row;
import org.strawblue.core.table.Table;

/**
 * Tempered hardness from the published curves of a grade: HRC read at P = T (c + log₁₀ t) from hardness known at another
 * time [h] and temperature T [K]. Several sheets are pooled; their scatter, drawn towards that of all grades, is the
 * spread of a new heat.
 *
 * <p>Range: the parameters the sheets cover, never beyond. Error: see the spread of each grade in
 * {@code tempering-grades.csv}; carrying one curve of a heat to other times costs 1.0 HRC root mean square on 32 heats.
 * Source: supplier and handbook sheets, {@code tempering-curves.csv}; Hollomon and Jaffe 1945 for the exchange.
 */
public final class AnchoredCurve implements TemperingLaw, TemperingPrior {

    private static final String NAME = "A published tempering curve";

    private static final Map<String, Row> ROWS = rows();
    private static final Map<String, Grade> GRADES = new ConcurrentHashMap<>();

    private final Grade grade;
    private final TemperedHardness hardness;

    /** What the sheets of one grade make together, worked out once, when first asked for. */
    private record Grade(
            HollomonJaffe exchange,
            PooledCurve curve,
            double sd,
            double reference,
            double quenched,
            List<Finding> notes,
            List<Basis> bases) {}

    private AnchoredCurve(Grade grade, List<Coupon> coupons, OptionalDouble asQuenched) {
        this.grade = grade;
        this.hardness =
                new TemperedHardness(NAME, this, coupons, asQuenched, HeatSpread.K_KNOWN, grade.notes(), grade.bases());
    }

    /** The curve of a grade, and what is known of the bar; empty where the grade has none. */
    public static Optional<AnchoredCurve> ofGrade(String key, List<Coupon> coupons, OptionalDouble asQuenched) {
        return Optional.ofNullable(ROWS.get(key))
                .map(row -> GRADES.computeIfAbsent(key, k -> grade(row, TemperingSheet.of(k))))
                .map(g -> new AnchoredCurve(g, coupons, asQuenched));
    }

    private static Map<String, Row> rows() {
        Map<String, Row> rows = new HashMap<>();
        Table.of(AnchoredCurve.class, "tempering-grades.csv").rows().forEach(row -> rows.put(row.text("grade"), row));
        return rows;
    }

    private static Grade grade(Row row, List<TemperingSheet> sheets) {
        HollomonJaffe exchange = new HollomonJaffe(row.number("exchange_constant"));
        double reference = Math.exp(sheets.stream()
                .mapToDouble(s -> Math.log(s.reference()))
                .average()
                .orElseThrow());
        return new Grade(
                exchange,
                PooledCurve.of(sheets, exchange),
                row.number("heat_sd_hrc"),
                reference,
                sheets.stream()
                        .flatMapToDouble(s -> s.asQuenched().stream())
                        .average()
                        .orElse(Double.NaN),
                repeated(sheets),
                bases(row, sheets));
    }

    private static List<Basis> bases(Row row, List<TemperingSheet> sheets) {
        List<Basis> bases = new ArrayList<>();
        sheets.forEach(s -> bases.addAll(s.bases()));
        bases.add(new Basis(
                "exchange of tempering time for temperature",
                row.text("exchange_source"),
                Standing.of(row.text("exchange_standing"))));
        bases.add(new Basis(
                "spread between heats of " + row.text("grade"), row.text("source"), Standing.of(row.text("standing"))));
        return bases;
    }

    private static List<Finding> repeated(List<TemperingSheet> sheets) {
        int most = sheets.stream().mapToInt(TemperingSheet::tempers).max().orElse(1);
        if (most < 2) {
            return List.of();
        }
        return List.of(new Finding.Note(
                Phrase.of("The published curve is of pieces tempered {} times", Quantity.number(most)),
                Phrase.of("Austenite left by the quench turns to fresh martensite on cooling from the first temper;"
                        + " only the next one tempers that."),
                Phrase.of("Temper as often, cooling to hand warmth between.")));
    }

    @Override
    public HollomonJaffe exchange() {
        return grade.exchange();
    }

    @Override
    public Answer<Estimate> hardness(Temper temper) {
        Answer<Estimate> answer = hardness.at(temper);
        return answer.value().isPresent() || answer.stopped() ? answer : Answer.refused(outside(temper));
    }

    private Finding outside(Temper temper) {
        return new Finding.Stop(
                Phrase.of(
                        "{} for {} lies where no published curve of this steel tells; at that time they run from {} to {}",
                        Quantity.temperature(temper.kelvin()),
                        Quantity.time(temper.seconds()),
                        Quantity.temperature(
                                grade.exchange().kelvin(grade.curve().first(), temper.seconds())),
                        Quantity.temperature(
                                grade.exchange().kelvin(grade.curve().last(), temper.seconds()))),
                Phrase.of("A curve is read between its points, never carried beyond them or over a wide gap."),
                Phrase.of("Choose a temper within the curve, or measure a test piece."));
    }

    @Override
    public double spread() {
        return grade.sd();
    }

    @Override
    public double decades(double seconds) {
        return Math.log10(seconds / grade.reference());
    }

    @Override
    public double mean(double z) {
        return grade.curve().at(TemperingFigures.parameter(z));
    }

    @Override
    public double quenched() {
        return grade.quenched();
    }

    @Override
    public double covariance(double z1, double u1, double z2, double u2) {
        return HeatSpread.FITTED.covariance(HeatSpread.FITTED.factor(grade.sd()), z1, u1, z2, u2);
    }
}
