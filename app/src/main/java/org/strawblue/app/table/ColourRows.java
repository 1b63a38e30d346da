package org.strawblue.app.table;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.strawblue.app.service.ColourService;
import org.strawblue.core.colour.Light;
import org.strawblue.core.estimate.Answer;
import org.strawblue.core.estimate.Finding;
import org.strawblue.core.oxide.ColourReading;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Unit;
import org.strawblue.core.quantity.Units;
import org.strawblue.core.steel.Grade;
import org.strawblue.core.steel.Grades;

/** Colour after a heat, for each row. */
final class ColourRows implements RowQuestion {

    private static final Unit NANOMETRE = Units.of(Dimension.LENGTH, "nm");

    @Override
    public List<List<String>> needs() {
        return List.of(List.of("temperature"));
    }

    @Override
    public List<String> adds() {
        return List.of("name", "nm", "hex");
    }

    @Override
    public RowAnswer ask(Cells cells) {
        double kelvin = cells.needed("temperature");
        OptionalDouble time = cells.si("time");
        double seconds = time.orElse(ColourService.CHART_SECONDS);
        Optional<Light> light = light(cells);
        double chromium = chromium(cells);
        if (!(seconds > 0) && cells.faults().isEmpty()) {
            cells.fault("time must be more than 0");
        }
        if (!cells.faults().isEmpty()) {
            return RowAnswer.NONE;
        }
        Answer<ColourReading> answer = ColourService.reading(kelvin, seconds, light.orElseThrow(), chromium);
        List<Finding> findings = new ArrayList<>(answer.findings());
        if (time.isEmpty()) {
            findings.add(ColourService.chartTime());
        }
        return new RowAnswer(answer.value().map(ColourRows::values).orElse(List.of()), findings);
    }

    private static List<String> values(ColourReading reading) {
        return List.of(
                reading.colour().name().word(),
                String.format(
                        Locale.ROOT,
                        "%.1f",
                        NANOMETRE.fromSi(reading.thickness().value())),
                reading.colour().hex());
    }

    private static Optional<Light> light(Cells cells) {
        String word = cells.text("light");
        Optional<Light> light = word.isEmpty() ? Optional.of(Light.DAYLIGHT) : Light.find(word);
        if (light.isEmpty()) {
            cells.fault("light “" + word + "”: expected daylight, lamp, warm LED or neutral LED");
        }
        return light;
    }

    private static double chromium(Cells cells) {
        String grade = cells.text("grade");
        return cells.si("Cr")
                .orElseGet(() -> grade.isEmpty()
                        ? 0
                        : Grades.find(grade)
                                .value()
                                .map(Grade::composition)
                                .map(c -> c.cr())
                                .orElse(0.0));
    }
}
