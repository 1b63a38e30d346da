package org.strawblue.core.spring.identify;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.strawblue.core.estimate.Normal;
import org.strawblue.core.quantity.Band;
import org.strawblue.core.spring.SpringMaterial;
import org.strawblue.core.spring.SpringMaterial.Key;
import org.strawblue.core.table.Row;
import org.strawblue.core.table.Table;

/**
 * P(material | what was seen) ∝ P(material) · Π P(answer | material) · P(implied modulus | material).
 *
 * <p>Implied modulus G* = 8 k D³ n/d⁴ from the push test: 41 GPa is bronze, 69 stainless, 77 to 83 steel. Grades of steel are
 * not told apart by it, since their moduli agree within what callipers leave open. Source: Bayes' rule; figures in
 * {@code clues.csv}.
 */
public record MaterialOdds(Map<Key, Double> odds) {

    private static final double PLAUSIBLE = Practice.OF.number("plausible_from");

    private static final class Clues {
        private static final List<Row> ROWS =
                Table.of(MaterialOdds.class, "clues.csv").rows();
    }

    /** What is likely before anything is seen. */
    public static MaterialOdds prior() {
        Map<Key, Double> odds = new EnumMap<>(Key.class);
        for (Key key : Key.values()) {
            row("drawer", "any").flatMap(r -> share(r, key)).ifPresent(p -> odds.put(key, p));
        }
        return new MaterialOdds(odds);
    }

    /** The owner names it: nothing else is asked. */
    public static MaterialOdds certain(Key key) {
        return new MaterialOdds(new EnumMap<>(Map.of(key, 1.0)));
    }

    /** The owner names it, but what he saw may speak against it: so much for his word, the rest by what drawers hold. */
    MaterialOdds leaning(Key named, double share) {
        Map<Key, Double> leaning = new EnumMap<>(Key.class);
        odds.forEach((key, p) -> leaning.put(key, (1 - share) * p + (key == named ? share : 0)));
        return new MaterialOdds(leaning);
    }

    /** After an answer, such as magnet: slight; unchanged where the answer is none of the table's. */
    public MaterialOdds given(String clue, String answer) {
        Optional<Row> row = row(clue, answer);
        return row.isEmpty() ? this : weighed(k -> share(row.get(), k).orElse(1.0));
    }

    /**
     * After a push test.
     *
     * @param modulus G* [Pa]
     * @param error half-width of its 80 % interval, as a share [1]
     * @param wire [m]
     */
    public MaterialOdds given(double modulus, double error, double wire) {
        return weighed(k -> {
            SpringMaterial.Stiffness stiffness = SpringMaterial.of(k).stiffness(wire);
            double spread = (stiffness.shearHigh() - stiffness.shearLow())
                    / 2
                    / stiffness.moduli().shear();
            double deviation = Math.hypot(error, spread) / Normal.HALF_OF_80;
            double off = Math.log(modulus / stiffness.moduli().shear()) / deviation;
            return Math.exp(-off * off / 2) / deviation;
        });
    }

    private MaterialOdds weighed(java.util.function.ToDoubleFunction<Key> likelihood) {
        Map<Key, Double> weighed = new EnumMap<>(Key.class);
        odds.forEach((key, p) -> weighed.put(key, p * likelihood.applyAsDouble(key)));
        double sum = weighed.values().stream().mapToDouble(p -> p).sum();
        if (!(sum > 0)) {
            return this;
        }
        weighed.replaceAll((k, p) -> p / sum);
        return new MaterialOdds(weighed);
    }

    public double of(Key key) {
        return odds.getOrDefault(key, 0.0);
    }

    /** The likeliest first. */
    public List<Key> ranked() {
        return odds.keySet().stream()
                .sorted(java.util.Comparator.comparingDouble(this::of).reversed())
                .toList();
    }

    /** Those with more than one chance in twenty: the weakest of them is what stress is judged by. */
    public List<Key> plausible() {
        return ranked().stream().filter(k -> of(k) >= PLAUSIBLE).toList();
    }

    /** Shear modulus, 80 % interval over all materials by their odds [Pa]. */
    public Band modulus(double wire) {
        double mean = 0;
        double square = 0;
        for (Key key : odds.keySet()) {
            SpringMaterial.Stiffness stiffness = SpringMaterial.of(key).stiffness(wire);
            double middle = (stiffness.shearHigh() + stiffness.shearLow()) / 2;
            double deviation = (stiffness.shearHigh() - stiffness.shearLow()) / 2 / Normal.HALF_OF_80;
            mean += of(key) * middle;
            square += of(key) * (middle * middle + deviation * deviation);
        }
        double half = Normal.HALF_OF_80 * Math.sqrt(Math.max(0, square - mean * mean));
        return new Band(org.strawblue.core.quantity.Dimension.STRESS, mean - half, mean + half);
    }

    private static Optional<Row> row(String clue, String answer) {
        return Clues.ROWS.stream()
                .filter(r -> r.text("clue").equals(clue) && r.text("answer").equals(answer))
                .findFirst();
    }

    private static Optional<Double> share(Row row, Key key) {
        return row.optionalText(key.name()).map(t -> row.number(key.name()));
    }
}
