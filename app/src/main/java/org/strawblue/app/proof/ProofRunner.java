package org.strawblue.app.proof;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import org.strawblue.core.quantity.Quantity;
import org.strawblue.core.quantity.Unit;
import org.strawblue.core.quantity.Units;

/** Runs cases through their operations. */
public final class ProofRunner {

    private final Map<String, Operation> operations;

    public ProofRunner(Map<String, Operation> operations) {
        this.operations = Map.copyOf(operations);
    }

    public List<Verdict> run(List<Case> cases) {
        return cases.stream().map(this::run).toList();
    }

    /** Never throws: whatever goes wrong in an operation is a failing verdict. */
    @SuppressWarnings("IllegalCatch")
    public Verdict run(Case check) {
        Operation operation = operations.get(check.operation());
        if (operation == null) {
            return Verdict.faulty(check, "unknown operation '" + check.operation() + "'");
        }
        try {
            return judge(check, operation.run(check.inputs()));
        } catch (RuntimeException e) {
            return Verdict.faulty(check, e.getClass().getSimpleName() + ": " + e.getMessage());
        }
    }

    private static Verdict judge(Case check, Result result) {
        if (check.expected() instanceof Expected.Word word) {
            return judge(check, word, result);
        }
        if (result instanceof Result.Number number) {
            return judge(check, inUnit(check, number.quantity()));
        }
        return new Verdict(check, ((Result.Word) result).text(), OptionalDouble.empty(), false, "");
    }

    private static Verdict judge(Case check, Expected.Word expected, Result result) {
        if (result instanceof Result.Word ours) {
            return new Verdict(
                    check, ours.text(), OptionalDouble.empty(), ours.text().equals(expected.text()), "");
        }
        return Verdict.faulty(check, "a word was expected, a number came");
    }

    private static Verdict judge(Case check, double ours) {
        if (Double.isNaN(ours)) {
            return Verdict.faulty(check, "the result is not a number");
        }
        String text = String.format(Locale.ROOT, "%.6g", ours);
        if (check.expected() instanceof Expected.Range range) {
            return new Verdict(check, text, OptionalDouble.empty(), range.low() <= ours && ours <= range.high(), "");
        }
        Expected.Value published = (Expected.Value) check.expected();
        double difference = ours - published.value();
        // the last digits of a decimal tolerance are not exact in binary
        boolean meets = Math.abs(difference) <= published.tolerance() + Math.ulp(published.value()) * 4;
        return new Verdict(check, text, OptionalDouble.of(difference), meets, "");
    }

    private static double inUnit(Case check, Quantity quantity) {
        String symbol = check.unit().isEmpty() ? "1" : check.unit();
        Unit unit = Units.find(quantity.dimension(), symbol)
                .orElseThrow(() -> new IllegalArgumentException(
                        "the result is a " + quantity.dimension() + ", which has no unit '" + symbol + "'"));
        return unit.fromSi(quantity.si());
    }
}
