package org.strawblue.app.table;

import java.util.Collections;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.strawblue.core.estimate.Answer;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.steel.Composition;
import org.strawblue.core.steel.Element;
import org.strawblue.core.steel.Grade;
import org.strawblue.core.steel.Grades;
import org.strawblue.core.steel.Steel;
import org.strawblue.core.steel.Temper;
import org.strawblue.core.steel.Tempering;
import org.strawblue.core.steel.TemperingLaw;

/** Hardness after tempering, for each row. The law of a steel is found once and kept. */
final class TemperRows implements RowQuestion {

    private static final int MOST_STEELS = 10_000;

    private final Map<String, Answer<TemperingLaw>> laws = new HashMap<>();

    @Override
    public List<List<String>> needs() {
        return List.of(List.of("grade", "C"), List.of("temperature"), List.of("time"));
    }

    @Override
    public List<String> adds() {
        return List.of("hrc", "hrc_low", "hrc_high");
    }

    @Override
    public RowAnswer ask(Cells cells) {
        double kelvin = cells.needed("temperature");
        double seconds = cells.needed("time");
        double times = cells.si("tempers").orElse(1);
        Optional<Answer<TemperingLaw>> law = law(cells);
        if (!cells.faults().isEmpty() || law.isEmpty()) {
            return RowAnswer.NONE;
        }
        if (!(kelvin > 0 && seconds > 0 && times >= 1)) {
            cells.fault("time must be more than 0, tempers 1 or more");
            return RowAnswer.NONE;
        }
        Temper temper = new Temper(kelvin, seconds);
        Answer<Estimate> hardness = law.get().then(l -> l.hardness(repeated(l, temper, (int) times)));
        return new RowAnswer(hardness.value().map(TemperRows::values).orElse(List.of()), hardness.findings());
    }

    private static Temper repeated(TemperingLaw law, Temper temper, int times) {
        return times == 1 ? temper : law.exchange().equivalent(Collections.nCopies(times, temper));
    }

    private static List<String> values(Estimate hardness) {
        return List.of(
                RowAnswer.hundredths(hardness.value()),
                RowAnswer.hundredths(hardness.low()),
                RowAnswer.hundredths(hardness.high()));
    }

    private Optional<Answer<TemperingLaw>> law(Cells cells) {
        StringBuilder key = new StringBuilder(cells.text("grade")).append('|').append(cells.text("as_quenched"));
        for (Element element : Element.values()) {
            key.append('|').append(cells.text(element.symbol()));
        }
        Answer<TemperingLaw> known = laws.get(key.toString());
        if (known != null) {
            return Optional.of(known);
        }
        Optional<Answer<TemperingLaw>> found = steel(cells).map(s -> s.then(Tempering::law));
        if (laws.size() > MOST_STEELS) {
            laws.clear();
        }
        found.filter(f -> cells.faults().isEmpty()).ifPresent(f -> laws.put(key.toString(), f));
        return found;
    }

    /** By the name of a known grade, by analysis, or both; an unknown name does no harm beside an analysis. */
    private static Optional<Answer<Steel>> steel(Cells cells) {
        Optional<Composition> composition = composition(cells);
        OptionalDouble asQuenched = cells.si("as_quenched");
        if (!cells.faults().isEmpty()) {
            return Optional.empty();
        }
        String word = cells.text("grade");
        if (composition.isPresent()) {
            Optional<String> grade = word.isEmpty()
                    ? Optional.empty()
                    : Grades.find(word).value().map(Grade::name);
            return Optional.of(Answer.of(new Steel(grade, composition, asQuenched, List.of())));
        }
        if (word.isEmpty()) {
            cells.fault("neither a grade nor a composition");
            return Optional.empty();
        }
        return Optional.of(
                Grades.find(word).map(g -> new Steel(Optional.of(g.name()), Optional.empty(), asQuenched, List.of())));
    }

    /** Absent where no carbon is given: an analysis without it says nothing of hardness. */
    private static Optional<Composition> composition(Cells cells) {
        OptionalDouble carbon = cells.si(Element.C.symbol());
        if (carbon.isEmpty()) {
            return Optional.empty();
        }
        Map<Element, Double> percents = new EnumMap<>(Element.class);
        for (Element element : Element.values()) {
            cells.si(element.symbol()).ifPresent(p -> percents.put(element, p));
        }
        try {
            return cells.faults().isEmpty() ? Optional.of(Composition.of(percents)) : Optional.empty();
        } catch (IllegalArgumentException e) {
            cells.fault("composition: " + e.getMessage());
            return Optional.empty();
        }
    }
}
