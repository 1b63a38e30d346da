package org.strawblue.app.report.paper;

import java.util.ArrayList;
import java.util.List;
import org.strawblue.app.report.CardView;
import org.strawblue.app.report.CardView.FigureView;
import org.strawblue.app.report.CardView.FindingView;
import org.strawblue.app.report.CardView.ItemView;
import org.strawblue.app.report.CardView.PictureView;
import org.strawblue.app.report.CardView.StepView;
import org.strawblue.app.report.CardView.Weight;
import org.strawblue.app.report.Footnotes;
import org.strawblue.app.report.Text;
import org.strawblue.app.report.paper.Block.FigurePair;
import org.strawblue.app.report.paper.Block.FigureRow;
import org.strawblue.app.report.paper.Block.Gap;
import org.strawblue.app.report.paper.Block.Paragraph;
import org.strawblue.app.report.paper.Block.Rule;
import org.strawblue.app.report.paper.Block.Warning;
import org.strawblue.app.report.paper.Flow.Group;
import org.strawblue.app.report.paper.Flow.Placed;
import org.strawblue.core.job.UnitSystem;
import org.strawblue.core.source.Source;

/** The card taken apart into groups of blocks, in the order in which they are set. */
final class CardBlocks {

    private final CardView card;
    private final UnitSystem system;
    private final List<Group> groups = new ArrayList<>();

    private CardBlocks(CardView card, UnitSystem system) {
        this.card = card;
        this.system = system;
    }

    static List<Group> of(CardView card, UnitSystem system) {
        CardBlocks blocks = new CardBlocks(card, system);
        blocks.head();
        blocks.items("To get", card.toGet());
        blocks.items("Have ready", card.ready());
        card.steps().forEach(blocks::step);
        blocks.remarks();
        blocks.unknowns();
        blocks.footnotes();
        return blocks.groups;
    }

    private void head() {
        List<Placed> head = group("");
        add(head, 0, new Paragraph(Style.TITLE, card.title()));
        add(head, 0, new Gap(4), new Rule(1.2, 1), new Gap(5));
        if (card.refused()) {
            add(head, 0, new Paragraph(Style.BANNER, "Not to be done as asked"), new Gap(3));
            card.stops().forEach(s -> finding(head, 0, s));
            add(head, 0, new Rule(1.2, 1), new Gap(5));
        }
        for (Text line : card.summary()) {
            add(head, 0, new Paragraph(Style.SUMMARY, "–", line.in(system), false));
        }
        add(head, 0, new Gap(6));
    }

    private void step(StepView step) {
        String stage = step.stage() + (step.part().isBlank() ? "" : " · " + step.part());
        List<Placed> group = group(step.number() + "  " + stage);
        add(group, 0, new Gap(4), new Rule(0.6, 0.5), new Gap(5));
        double in = StepHead.MARGIN;
        add(group, in, new StepHead(step.number(), stage, step.lead().in(system)));
        step.then().forEach(t -> add(group, in, new Paragraph(Style.STRONG, t.in(system)), new Gap(2)));
        step.hazards().forEach(h -> add(group, in, new Warning(h)));
        figures(group, step.figures());
        pictures(group, step.pictures());
        add(group, in, new Gap(3));
        step.findings().stream().filter(f -> f.weight() != Weight.STOP).forEach(f -> finding(group, in, f));
        String reasons =
                String.join(" ", step.reasons().stream().map(r -> r.in(system)).toList());
        if (!reasons.isEmpty()) {
            add(group, in, new Paragraph(Style.SMALL, reasons));
        }
    }

    private void figures(List<Placed> group, List<FigureView> figures) {
        for (int i = 0; i < figures.size(); i += 2) {
            List<FigureRow> pair = figures.subList(i, Math.min(i + 2, figures.size())).stream()
                    .map(this::row)
                    .toList();
            add(group, StepHead.MARGIN, new FigurePair(pair));
        }
    }

    private FigureRow row(FigureView figure) {
        return new FigureRow(figure.label(), figure.marked(system));
    }

    private void pictures(List<Placed> group, List<PictureView> pictures) {
        for (int i = 0; i < pictures.size(); i += PictureRow.IN_A_ROW) {
            List<PictureRow.Captioned> row =
                    pictures.subList(i, Math.min(pictures.size(), i + PictureRow.IN_A_ROW)).stream()
                            .map(p -> new PictureRow.Captioned(p.caption().in(system), p.drawing(system)))
                            .toList();
            add(group, StepHead.MARGIN, new PictureRow(row));
        }
    }

    private void finding(List<Placed> group, double indent, FindingView f) {
        boolean last = f.why().isBlank() && f.remedy().isBlank();
        String sign = f.weight() == Weight.NOTE ? "" : "▲";
        add(
                group,
                indent,
                new Paragraph(Style.STRONG, sign, f.word() + ". " + f.what().in(system), !last));
        if (!last) {
            String arrow = f.remedy().isBlank() ? "" : " → ";
            String more = f.why().in(system) + arrow + f.remedy().in(system);
            add(group, indent, new Paragraph(Style.BODY, more.trim()));
        }
        add(group, indent, new Gap(4));
    }

    private void remarks() {
        if (!card.remarks().isEmpty()) {
            List<Placed> group = section("On the job as a whole");
            card.remarks().forEach(f -> finding(group, 0, f));
        }
    }

    private void items(String heading, List<ItemView> items) {
        if (items.isEmpty()) {
            return;
        }
        List<Placed> group = section(heading);
        for (ItemView item : items) {
            String why = item.why().isBlank() ? "" : " – " + item.why().in(system);
            add(group, 0, new Paragraph(Style.BODY, "□", item.what().in(system) + why, false), new Gap(1.5));
        }
    }

    private void unknowns() {
        if (!card.unknowns().isEmpty()) {
            List<Placed> group = section("Not known, and what that costs");
            card.unknowns()
                    .forEach(u -> add(group, 0, new Paragraph(Style.BODY, "?", u.in(system), false), new Gap(1.5)));
        }
    }

    private void footnotes() {
        Footnotes notes = card.footnotes();
        if (!notes.weak().isEmpty()) {
            List<Placed> group = section(Footnotes.MARK + " What rests on memory or assumption");
            for (Footnotes.Weak weak : notes.weak()) {
                add(group, 0, new Paragraph(Style.SMALL, weak.word() + ": " + String.join("; ", weak.what()) + "."));
            }
        }
        if (!notes.sources().isEmpty()) {
            List<Placed> group = section("Sources");
            String all = String.join(
                    " · ", notes.sources().stream().map(Source::title).toList());
            add(group, 0, new Paragraph(Style.SMALL, all));
        }
    }

    private List<Placed> section(String heading) {
        List<Placed> group = group(heading);
        add(group, 0, new Gap(8), new Rule(0.6, 0.5), new Gap(4), new Paragraph(Style.HEADING, "", heading, true));
        return group;
    }

    private List<Placed> group(String name) {
        List<Placed> group = new ArrayList<>();
        groups.add(new Group(name, group));
        return group;
    }

    private static void add(List<Placed> group, double indent, Block... blocks) {
        for (Block block : blocks) {
            group.add(new Placed(block, indent));
        }
    }
}
