package org.strawblue.app.report.paper;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.strawblue.app.report.paper.Flow.Group;
import org.strawblue.app.report.paper.Flow.Placed;

class FlowTest {

    private static final double DEPTH = 700;

    private record Brick(int number, double tall, boolean keepWithNext) implements Block {
        @Override
        public double height(Typefaces faces, double width) {
            return tall;
        }

        @Override
        public void draw(Pencil pencil, Typefaces faces, double x, double y, double width) {}
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void blocksKeepTheirOrderFitThePageAndAreNotParted(long seed) throws IOException {
        SplittableRandom random = new SplittableRandom(seed);
        try (PDDocument document = new PDDocument()) {
            Flow flow = new Flow(Typefaces.load(document), 500, DEPTH);
            int number = 0;
            for (int g = 0; g < 12; g++) {
                List<Placed> blocks = new ArrayList<>();
                int count = random.nextInt(1, 9);
                for (int i = 0; i < count; i++) {
                    boolean keep = i < count - 1 && random.nextInt(4) == 0;
                    blocks.add(new Placed(new Brick(number++, random.nextDouble(5, 150), keep), 0));
                }
                flow.group(new Group("", blocks));
            }
            check(flow.pages(), number);
        }
    }

    private static void check(List<List<Flow.Set>> pages, int count) {
        int expected = 0;
        for (List<Flow.Set> page : pages) {
            assertThat(page).isNotEmpty();
            double y = 0;
            for (Flow.Set set : page) {
                Brick brick = (Brick) set.placed().block();
                assertThat(brick.number()).isEqualTo(expected++);
                assertThat(set.y()).isEqualTo(y);
                y += brick.tall();
            }
            assertThat(y).isLessThanOrEqualTo(DEPTH);
            boolean lastPage = page == pages.get(pages.size() - 1);
            Brick last = (Brick) page.get(page.size() - 1).placed().block();
            assertThat(last.keepWithNext() && !lastPage).isFalse();
        }
        assertThat(expected).isEqualTo(count);
    }

    static LongStream seeds() {
        return LongStream.range(0, 15);
    }
}
