package org.strawblue.app.report.picture;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.strawblue.app.report.AmountWriter;
import org.strawblue.app.report.SampleCard;
import org.strawblue.app.report.Xml;
import org.strawblue.app.report.picture.Mark.Label;
import org.strawblue.core.job.Picture;
import org.strawblue.core.job.UnitSystem;

class DrawingTest {

    private static final double SPILL = 2;

    @ParameterizedTest
    @MethodSource("drawings")
    void everyMarkLiesOnTheSheet(Drawing drawing) {
        for (Mark mark : drawing.marks()) {
            if (mark instanceof Mark.Path path) {
                assertThat(path.points()).allMatch(p -> onSheet(drawing, p.x(), p.y()), mark.toString());
            } else if (mark instanceof Mark.Field f) {
                assertThat(onSheet(drawing, f.x(), f.y()) && onSheet(drawing, f.x() + f.width(), f.y() + f.height()))
                        .isTrue();
            } else if (mark instanceof Label label) {
                assertThat(onSheet(drawing, label.left(), label.y()) && onSheet(drawing, label.right(), label.y()))
                        .as(label.text())
                        .isTrue();
            }
        }
    }

    @ParameterizedTest
    @MethodSource("drawings")
    void labelsDoNotLieOnEachOther(Drawing drawing) {
        List<Label> labels = drawing.marks().stream()
                .filter(Label.class::isInstance)
                .map(Label.class::cast)
                .toList();
        for (Label a : labels) {
            for (Label b : labels) {
                assertThat(a != b && a.overlaps(b))
                        .as(a.text() + " | " + b.text())
                        .isFalse();
            }
        }
    }

    @ParameterizedTest
    @MethodSource("drawings")
    void svgIsWellFormedAndTellsWhatItShows(Drawing drawing) {
        var svg = Xml.parse(SvgWriter.write(drawing));
        assertThat(Xml.all(svg, "title").get(0).getTextContent()).isEqualTo(drawing.title());
        assertThat(Xml.all(svg, "path").size()
                        + Xml.all(svg, "rect").size()
                        + Xml.all(svg, "text").size())
                .isEqualTo(drawing.marks().size());
    }

    @Test
    void theRibbonShowsEverySwatchAndNoOtherColour() {
        Picture.ColourRibbon ribbon = (Picture.ColourRibbon) pictures().get(0);
        Drawing drawing = Pictures.draw(ribbon, new AmountWriter(UnitSystem.METRIC));
        assertThat(drawing.marks().stream().filter(Mark.Field.class::isInstance).map(m -> ((Mark.Field) m).hex()))
                .containsSubsequence(
                        ribbon.swatches().stream().map(Picture.Swatch::hex).toList())
                .isSubsetOf(ribbon.swatches().stream().map(Picture.Swatch::hex).toList());
        assertThat(drawing.description()).contains("pale straw from 188 °C (370 °F)");
    }

    private static List<Picture> pictures() {
        return SampleCard.plunger().steps().stream()
                .flatMap(s -> s.pictures().stream())
                .toList();
    }

    static Stream<Drawing> drawings() {
        return Stream.of(UnitSystem.values())
                .flatMap(u -> pictures().stream().map(p -> Pictures.draw(p, new AmountWriter(u))));
    }

    private static boolean onSheet(Drawing drawing, double x, double y) {
        return x >= -SPILL && x <= drawing.width() + SPILL && y >= -SPILL && y <= drawing.height() + SPILL;
    }
}
