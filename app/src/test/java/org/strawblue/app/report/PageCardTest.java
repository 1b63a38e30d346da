package org.strawblue.app.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.strawblue.core.job.JobCard;
import org.strawblue.core.job.UnitSystem;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

class PageCardTest {

    private static final Pattern ADDRESSES =
            Pattern.compile("(?:src|href|action|srcset|poster)=\"([^\"]*)\"|url\\(\"?([^)\"]*)|@import\\s+(\\S+)");

    @Test
    void everyPageIsWellFormedAndNamed() {
        for (JobCard card : cards()) {
            Document page = Xml.parse(PageCard.write(CardView.of(card), UnitSystem.METRIC));
            assertThat(Xml.all(page, "h1")).hasSize(1);
            assertThat(Xml.all(page, "title").get(0).getTextContent()).isEqualTo(Text.clean(card.title()));
            assertThat(page.getDocumentElement().getAttribute("lang")).isEqualTo("en");
        }
    }

    @Test
    void nothingIsFetchedFromAnywhere() {
        for (JobCard card : cards()) {
            String page = PageCard.write(CardView.of(card), UnitSystem.METRIC);
            assertThat(ADDRESSES.matcher(page).results())
                    .isNotEmpty()
                    .extracting(m -> m.group(1) != null ? m.group(1) : String.valueOf(m.group(2)))
                    .allMatch(a -> a.startsWith("#") || a.startsWith("data:"));
        }
    }

    @Test
    void textFromTheJobFileStaysText() {
        Document page = Xml.parse(PageCard.write(CardView.of(SampleCard.hostile()), UnitSystem.METRIC));
        assertThat(Xml.all(page, "h1").get(0).getTextContent()).startsWith("<b>Pin & \"bush\"</b>");
        assertThat(Xml.all(page, "h1").get(0).getElementsByTagName("*").getLength())
                .isZero();
    }

    @Test
    void everyStepHasItsBoxItsLeadAndItsHeading() {
        Document page = Xml.parse(PageCard.write(CardView.of(SampleCard.plunger()), UnitSystem.METRIC));
        List<Element> steps = Xml.all(page, "li").stream()
                .filter(e -> e.getAttribute("class").equals("step"))
                .toList();
        assertThat(steps).hasSize(SampleCard.plunger().steps().size());
        assertThat(steps)
                .allMatch(s -> s.getElementsByTagName("h3").getLength() == 1
                        && s.getElementsByTagName("input").getLength() == 1);
        assertThat(Xml.all(page, "input")).allMatch(i -> i.getAttribute("type").equals("checkbox"));
        assertThat(Xml.all(page, "label").stream()
                        .map(l -> l.getAttribute("for"))
                        .filter(f -> !f.isEmpty()))
                .allMatch(f -> page.getDocumentElement().getTextContent() != null
                        && ids(page).contains(f));
        assertThat(ids(page)).doesNotHaveDuplicates();
    }

    @Test
    void everyDrawingIsToldInWords() {
        Document page = Xml.parse(PageCard.write(CardView.of(SampleCard.plunger()), UnitSystem.METRIC));
        List<Element> drawings = Xml.all(page, "svg");
        assertThat(drawings).hasSize(8).allMatch(s -> s.getAttribute("role").equals("img"));
        assertThat(drawings)
                .allMatch(s -> !text(s, "title").isBlank() && text(s, "desc").endsWith("."));
    }

    @Test
    void bothUnitSystemsAreInThePageAndTheAskedOneShows() {
        String inch = PageCard.write(CardView.of(SampleCard.plunger()), UnitSystem.INCH);
        assertThat(inch).contains("class=\"in-inch\"").contains("lbf").contains("N/mm");
        assertThat(PageCard.write(CardView.of(SampleCard.plunger()), UnitSystem.METRIC))
                .contains("class=\"in-metric\"");
    }

    @Test
    void aRefusalIsTheFirstThingUnderTheTitle() {
        Document page = Xml.parse(PageCard.write(CardView.of(SampleCard.refused()), UnitSystem.METRIC));
        assertThat(Xml.all(page, "section").get(0).getAttribute("class")).isEqualTo("refused");
        assertThat(Xml.all(page, "h2").get(0).getTextContent()).isEqualTo("Not to be done as asked");
        assertThat(Xml.all(page, "ol")).isEmpty();
    }

    private static List<JobCard> cards() {
        return List.of(SampleCard.plunger(), SampleCard.refused(), SampleCard.hostile());
    }

    private static List<String> ids(Document page) {
        return Xml.all(page, "*").stream()
                .map(e -> e.getAttribute("id"))
                .filter(i -> !i.isEmpty())
                .toList();
    }

    private static String text(Element element, String tag) {
        return element.getElementsByTagName(tag).item(0).getTextContent();
    }
}
