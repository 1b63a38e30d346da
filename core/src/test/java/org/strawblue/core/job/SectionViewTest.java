package org.strawblue.core.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.strawblue.core.heat.conduction.Conduction;
import org.strawblue.core.heat.course.Course;
import org.strawblue.core.heat.course.CourseRun;
import org.strawblue.core.heat.course.Setting;
import org.strawblue.core.heat.course.Spell;
import org.strawblue.core.part.PartShape;
import org.strawblue.core.quantity.Phrase;

class SectionViewTest {

    private static final Setting PLATE = Setting.OnPlate.steady(563, 20e-6, 0.15, 0.3, 293);
    private static final Setting OVEN = Setting.InOven.steady(500, 6, 0.15);

    /** Shape, setting, and the area of its section drawn [m²] by geometry. */
    static Stream<Arguments> sections() {
        PartShape pin = new PartShape.SteppedPin(
                List.of(new PartShape.SteppedPin.Piece(0.006, 0.01), new PartShape.SteppedPin.Piece(0.01, 0.03)));
        return Stream.of(
                Arguments.of(new PartShape.RoundBar(0.012, 0.06), PLATE, Math.PI * 0.006 * 0.006),
                Arguments.of(new PartShape.RoundBar(0.012, 0.06), OVEN, Math.PI * 0.006 * 0.006),
                Arguments.of(new PartShape.Tube(0.02, 0.01, 0.06), PLATE, Math.PI * (1e-4 - 0.25e-4)),
                Arguments.of(new PartShape.Flat(0.004, 0.02, 0.06), PLATE, 0.004 * 0.02),
                Arguments.of(new PartShape.SquareBar(0.01, 0.06), OVEN, 1e-4),
                Arguments.of(pin, OVEN, 0.006 * 0.01 + 0.01 * 0.03));
    }

    @ParameterizedTest
    @MethodSource("sections")
    void thePatchesCoverTheSectionOnce(PartShape shape, Setting setting, double area) {
        CourseRun run = Conduction.run(new Course(shape, 293, List.of(new Spell(setting, 60))))
                .value()
                .orElseThrow();
        Picture.SectionWarming view = SectionView.of(shape, run, run.frames(), Phrase.of("x"), false);
        double drawn = view.cells().stream().mapToDouble(SectionViewTest::area).sum();
        assertThat(drawn).isCloseTo(area, within(0.01 * area));
        assertThat(view.moments()).allSatisfy(m -> {
            assertThat(m.kelvin()).hasSameSizeAs(view.cells());
            assertThat(m.kelvin()).allMatch(k -> k >= 292.9 && k <= 563);
        });
        assertThat(view.cells()).allSatisfy(c -> assertThat(c.corners()).allMatch(p -> p.y() >= -1e-12));
    }

    /** Shoelace formula. */
    private static double area(Picture.Cell cell) {
        List<Picture.Corner> c = cell.corners();
        double sum = 0;
        for (int i = 0; i < c.size(); i++) {
            Picture.Corner a = c.get(i);
            Picture.Corner b = c.get((i + 1) % c.size());
            sum += a.x() * b.y() - b.x() * a.y();
        }
        return Math.abs(sum) / 2;
    }
}
