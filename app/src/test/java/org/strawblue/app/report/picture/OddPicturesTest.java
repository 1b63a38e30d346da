package org.strawblue.app.report.picture;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.strawblue.app.report.AmountWriter;
import org.strawblue.core.job.Picture;
import org.strawblue.core.job.UnitSystem;
import org.strawblue.core.quantity.Band;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Phrase;

/** Pictures of what no sample shows: hair-thin and stubby springs, one colour, no wish, no limit. */
class OddPicturesTest {

    private static final Phrase CAPTION = Phrase.of("caption");

    @ParameterizedTest
    @MethodSource("seeds")
    void everyPictureCanBeDrawnOnItsSheet(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (Picture picture :
                List.of(spring(random), force(random), ribbon(random), curve(random), clock(random), section(random))) {
            for (UnitSystem system : UnitSystem.values()) {
                Drawing drawing = Pictures.draw(picture, new AmountWriter(system));
                assertThat(drawing.height()).isBetween(60.0, 600.0);
                assertThat(drawing.marks()).isNotEmpty().allMatch(m -> inside(drawing, m), picture.toString());
                assertThat(overlaps(drawing)).as(picture.toString()).isEmpty();
            }
        }
    }

    private static List<String> overlaps(Drawing drawing) {
        List<Mark.Label> labels = drawing.marks().stream()
                .filter(Mark.Label.class::isInstance)
                .map(Mark.Label.class::cast)
                .toList();
        return labels.stream()
                .flatMap(a ->
                        labels.stream().filter(b -> a != b && a.overlaps(b)).map(b -> a.text() + " | " + b.text()))
                .toList();
    }

    private static boolean inside(Drawing drawing, Mark mark) {
        double edge = 12;
        if (mark instanceof Mark.Path path) {
            return path.points().stream()
                    .allMatch(p -> p.x() >= -edge
                            && p.x() <= drawing.width() + edge
                            && p.y() >= -edge
                            && p.y() <= drawing.height() + edge);
        }
        return !(mark instanceof Mark.Label label)
                || label.left() >= -edge && label.right() <= drawing.width() + edge && label.y() <= drawing.height();
    }

    private static Picture spring(SplittableRandom random) {
        double wire = random.nextDouble(0.0002, 0.003);
        double outside = wire * random.nextDouble(4, 15);
        double coils = random.nextInt(4, 60) / 2.0;
        boolean closed = random.nextBoolean();
        boolean ground = closed && random.nextBoolean();
        double solid = (ground ? coils : coils + 1) * wire;
        double free = solid * random.nextDouble(1.3, 4);
        double rest = solid + (free - solid) * random.nextDouble(0.4, 1);
        double full = solid + (rest - solid) * random.nextDouble(0, 1);
        double bore = random.nextBoolean() ? outside * random.nextDouble(0.95, 1.3) : 0;
        double rod = random.nextBoolean() ? (outside - 2 * wire) * random.nextDouble(0.3, 1) : 0;
        return new Picture.SpringInPocket(
                CAPTION, wire, outside, coils, closed, ground, free, rest, full, solid, outside * 1.02, bore, rod);
    }

    private static Picture force(SplittableRandom random) {
        double solid = random.nextDouble(0.003, 0.05);
        double free = solid * random.nextDouble(1.2, 4);
        double rate = random.nextDouble(50, 50_000);
        double rest = solid + (free - solid) * random.nextDouble(0.3, 1);
        double full = solid + (rest - solid) * random.nextDouble(0, 1);
        double set =
                random.nextInt(4) == 0 ? Double.POSITIVE_INFINITY : rate * (free - solid) * random.nextDouble(0.2, 3);
        Optional<Band> wish = random.nextBoolean()
                ? Optional.of(new Band(Dimension.FORCE, 0.8 * rate * (free - full), 3 * rate * (free - full)))
                : Optional.empty();
        return new Picture.ForceLength(
                CAPTION, free, solid, rate, rate * 0.9, rate * 1.1, rest, full, Optional.empty(), wish, set);
    }

    private static Picture ribbon(SplittableRandom random) {
        int count = random.nextInt(1, 90);
        int names = random.nextInt(1, 12);
        List<Picture.Swatch> swatches = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            swatches.add(new Picture.Swatch(420 + 3.0 * i, "colour with a name " + i * names / count, "#a0b0c0"));
        }
        double low = random.nextDouble(380, 700);
        Band target = new Band(Dimension.TEMPERATURE, low, low + random.nextDouble(0, 60));
        return new Picture.ColourRibbon(CAPTION, swatches, target, 60, "a very yellow lamp");
    }

    private static Picture curve(SplittableRandom random) {
        List<Picture.CurvePoint> points = new ArrayList<>();
        double drop = random.nextInt(5) == 0 ? 0 : random.nextDouble(0.05);
        for (int i = 0; i <= 40; i++) {
            double hrc = 66 - drop * 10 * i;
            points.add(new Picture.CurvePoint(400 + 10 * i, hrc, hrc - 2, hrc + 2));
        }
        double low = random.nextDouble(20, 66);
        Optional<Band> wanted =
                random.nextBoolean() ? Optional.of(new Band(Dimension.HARDNESS, low, low + 2)) : Optional.empty();
        double at = random.nextDouble(300, 900);
        Optional<Band> chosen =
                random.nextBoolean() ? Optional.of(new Band(Dimension.TEMPERATURE, at, at + 10)) : Optional.empty();
        return new Picture.HardnessCurve(CAPTION, points, wanted, chosen, 3600);
    }

    private static Picture clock(SplittableRandom random) {
        double tau = random.nextDouble(5, 4000);
        double end = random.nextDouble(350, 900);
        List<Picture.ClockTrace> traces = new ArrayList<>();
        for (String place : List.of("underside", "top").subList(0, random.nextInt(1, 3))) {
            List<Picture.ClockPoint> points = new ArrayList<>();
            for (int i = 0; i <= 40; i++) {
                double t = tau * i / 10;
                double k = end - (end - 293) * Math.exp(-t / tau);
                points.add(new Picture.ClockPoint(t, k, k - random.nextDouble(20), k + random.nextDouble(20)));
            }
            traces.add(new Picture.ClockTrace(place, points));
        }
        double low = random.nextDouble(300, 900);
        double at = random.nextDouble(6 * tau);
        Optional<Band> pull =
                random.nextBoolean() ? Optional.of(new Band(Dimension.TIME, at, at * 1.2)) : Optional.empty();
        return new Picture.HeatClock(
                CAPTION,
                traces,
                Optional.of(new Band(Dimension.TEMPERATURE, low, low + random.nextDouble(30))),
                pull,
                List.of(new Picture.ColourSpan(tau, 2 * tau, "straw", "#ccaa66")));
    }

    private static Picture section(SplittableRandom random) {
        double width = random.nextDouble(0.002, 0.06);
        double height = random.nextDouble(0.002, 0.06);
        List<Picture.Corner> corners = List.of(
                new Picture.Corner(-width / 2, 0),
                new Picture.Corner(width / 2, 0),
                new Picture.Corner(width / 2, height),
                new Picture.Corner(-width / 2, height));
        List<Picture.Moment> moments = new ArrayList<>();
        int n = random.nextInt(1, 5);
        for (int i = 0; i < n; i++) {
            moments.add(new Picture.Moment(60 * i, List.of(random.nextDouble(293, 700))));
        }
        return new Picture.SectionWarming(CAPTION, List.of(new Picture.Cell(corners)), moments, random.nextBoolean());
    }

    static LongStream seeds() {
        return LongStream.range(0, 200);
    }
}
