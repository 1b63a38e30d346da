package org.strawblue.app.report;

import java.util.ArrayList;
import java.util.List;
import org.strawblue.app.report.picture.Drawing;
import org.strawblue.app.report.picture.Pictures;
import org.strawblue.core.estimate.Finding;
import org.strawblue.core.job.Figure;
import org.strawblue.core.job.Hazard;
import org.strawblue.core.job.Item;
import org.strawblue.core.job.JobCard;
import org.strawblue.core.job.Picture;
import org.strawblue.core.job.Step;
import org.strawblue.core.job.UnitSystem;
import org.strawblue.core.quantity.Phrase;

/** The card in words, ready to be set out: what the terminal, the page and the paper all print. */
public record CardView(
        String title,
        boolean refused,
        List<Text> summary,
        List<StepView> steps,
        List<FindingView> findings,
        List<Text> unknowns,
        List<ItemView> ready,
        List<ItemView> toGet,
        Footnotes footnotes) {

    /** One step; {@code number} counts from 1. */
    public record StepView(
            int number,
            String stage,
            String part,
            Text lead,
            List<Text> then,
            List<String> hazards,
            List<FigureView> figures,
            List<PictureView> pictures,
            List<FindingView> findings,
            List<Text> reasons) {}

    /** @param weak whether it rests on memory or assumption, and so carries the footnote's mark */
    public record FigureView(String label, Text value, boolean weak) {

        /** The value with the footnote's mark where it carries it. */
        public String marked(UnitSystem system) {
            return value.in(system) + (weak ? "\u00a0" + Footnotes.MARK : "");
        }
    }

    public record PictureView(Text caption, Picture picture) {

        /** The picture as drawn for one unit system. */
        public Drawing drawing(UnitSystem system) {
            return Pictures.draw(picture, new AmountWriter(system));
        }
    }

    /** @param word what kind of finding it is */
    public record FindingView(Weight weight, String word, Text what, Text why, Text remedy) {}

    public enum Weight {
        NOTE,
        CAUTION,
        STOP
    }

    public record ItemView(Text what, Text why) {}

    public static CardView of(JobCard card) {
        return new CardView(
                Text.clean(card.title()),
                card.refused(),
                texts(card.summary()),
                steps(card.steps()),
                findings(card.findings()),
                texts(card.unknowns()),
                items(card, true),
                items(card, false),
                Footnotes.of(card.bases()));
    }

    /** Every reason why the job must not be done as asked, wherever on the card it stands. */
    public List<FindingView> stops() {
        List<FindingView> stops = new ArrayList<>(findings);
        steps.forEach(s -> stops.addAll(s.findings()));
        return stops.stream().filter(f -> f.weight() == Weight.STOP).distinct().toList();
    }

    /** Whether any number stands with its interval in brackets. */
    public boolean hasIntervals() {
        return steps.stream().anyMatch(s -> !s.figures().isEmpty());
    }

    /** The findings on the job as a whole that do not stop it. */
    public List<FindingView> remarks() {
        return findings.stream().filter(f -> f.weight() != Weight.STOP).toList();
    }

    private static List<StepView> steps(List<Step> steps) {
        List<StepView> views = new ArrayList<>();
        for (Step step : steps) {
            views.add(new StepView(
                    views.size() + 1,
                    step.stage().title(),
                    Text.clean(step.part()),
                    Text.of(step.lead()),
                    texts(step.then()),
                    step.hazards().stream().map(Hazard::text).map(Text::clean).toList(),
                    step.figures().stream().map(CardView::figure).toList(),
                    step.pictures().stream()
                            .map(p -> new PictureView(Text.of(p.caption()), p))
                            .toList(),
                    findings(step.findings()),
                    texts(step.reasons())));
        }
        return List.copyOf(views);
    }

    private static FigureView figure(Figure figure) {
        return new FigureView(
                Text.clean(figure.label()),
                Text.of(figure.estimate()),
                figure.estimate().weak());
    }

    private static List<FindingView> findings(List<Finding> findings) {
        return findings.stream().map(CardView::finding).toList();
    }

    private static FindingView finding(Finding finding) {
        Weight weight = finding instanceof Finding.Stop
                ? Weight.STOP
                : finding instanceof Finding.Caution ? Weight.CAUTION : Weight.NOTE;
        String word = switch (weight) {
            case NOTE -> "Note";
            case CAUTION -> "Caution";
            case STOP -> "Stop";
        };
        return new FindingView(
                weight, word, Text.of(finding.what()), Text.of(finding.why()), Text.of(finding.remedy()));
    }

    private static List<ItemView> items(JobCard card, boolean inShop) {
        return card.haveReady().stream()
                .filter(i -> i.inShop() == inShop)
                .map(CardView::item)
                .toList();
    }

    private static ItemView item(Item item) {
        return new ItemView(Text.of(item.what()), Text.of(item.why()));
    }

    private static List<Text> texts(List<Phrase> phrases) {
        return phrases.stream().map(Text::of).toList();
    }
}
