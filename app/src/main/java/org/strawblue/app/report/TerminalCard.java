package org.strawblue.app.report;

import java.util.List;
import org.strawblue.app.report.CardView.FigureView;
import org.strawblue.app.report.CardView.FindingView;
import org.strawblue.app.report.CardView.ItemView;
import org.strawblue.app.report.CardView.StepView;
import org.strawblue.app.report.CardView.Weight;
import org.strawblue.core.job.Picture.ColourRibbon;
import org.strawblue.core.job.Picture.HeatClock;
import org.strawblue.core.job.UnitSystem;
import org.strawblue.core.source.Source;

/** The card as text for a terminal or a pipe. */
public final class TerminalCard {

    private static final int STEP_INDENT = 4;
    private static final int INNER_INDENT = 6;

    private final UnitSystem system;
    private final Screen screen;
    private final TextBlock out;

    private TerminalCard(UnitSystem system, Screen screen) {
        this.system = system;
        this.screen = screen;
        this.out = new TextBlock(screen);
    }

    /** The whole card, lines ended by {@code \n}. */
    public static String write(CardView card, UnitSystem system, Screen screen) {
        TerminalCard terminal = new TerminalCard(system, screen);
        terminal.card(card);
        return terminal.out.toString();
    }

    private void card(CardView card) {
        out.strong(0, card.title()).rule('━');
        if (card.refused()) {
            out.strong(0, "NOT TO BE DONE AS ASKED").gap();
            card.stops().forEach(s -> finding(0, s));
            out.rule('━');
        }
        card.summary().forEach(s -> out.hanging(0, "• ", s.in(system)));
        items("To get", card.toGet());
        items("Have ready", card.ready());
        card.steps().forEach(this::step);
        if (!card.remarks().isEmpty()) {
            heading("On the job as a whole");
            card.remarks().forEach(f -> finding(2, f));
        }
        unknowns(card.unknowns());
        footnotes(card.footnotes());
        if (card.hasIntervals()) {
            out.gap().faint(0, Footnotes.KEY);
        }
    }

    private void step(StepView step) {
        out.gap();
        String number = (step.number() < 10 ? " " : "") + step.number() + "  ";
        out.faint(0, number, step.stage() + (step.part().isBlank() ? "" : " · " + step.part()));
        out.strong(STEP_INDENT, step.lead().in(system));
        step.then().forEach(t -> out.hanging(STEP_INDENT, "", t.in(system)));
        step.hazards().forEach(h -> out.hanging(STEP_INDENT, "▲ ", "Danger. " + h));
        if (!step.figures().isEmpty()) {
            out.gap();
            figures(step.figures());
        }
        step.pictures().forEach(p -> {
            if (p.picture() instanceof ColourRibbon ribbon) {
                out.gap();
                new TerminalRibbon(ribbon, new AmountWriter(system), screen).write(out, INNER_INDENT);
            } else if (p.picture() instanceof HeatClock clock) {
                out.gap();
                new TerminalClock(clock, new AmountWriter(system)).write(out, INNER_INDENT);
            }
        });
        if (!step.reasons().isEmpty()) {
            out.gap();
            step.reasons().forEach(r -> out.hanging(INNER_INDENT, "– ", r.in(system)));
        }
        step.findings().stream().filter(f -> f.weight() != Weight.STOP).forEach(f -> {
            out.gap();
            finding(STEP_INDENT, f);
        });
    }

    private void figures(List<FigureView> figures) {
        int widest =
                figures.stream().mapToInt(f -> Wrap.length(f.label())).max().orElse(0);
        int column = Math.min(widest, screen.columns() / 2 - INNER_INDENT);
        for (FigureView f : figures) {
            out.columns(INNER_INDENT, f.label(), column, f.marked(system));
        }
    }

    private void finding(int indent, FindingView f) {
        String sign = f.weight() == Weight.NOTE ? "" : "▲ ";
        out.strong(indent, sign + f.word() + ". " + f.what().in(system));
        for (Text text : List.of(f.why(), f.remedy())) {
            if (!text.isBlank()) {
                out.hanging(indent + 2, text == f.remedy() ? "→ " : "", text.in(system));
            }
        }
    }

    private void unknowns(List<Text> unknowns) {
        if (!unknowns.isEmpty()) {
            heading("Not known, and what that costs");
            unknowns.forEach(u -> out.hanging(2, "? ", u.in(system)));
        }
    }

    private void items(String heading, List<ItemView> items) {
        if (!items.isEmpty()) {
            heading(heading);
            for (ItemView item : items) {
                String why = item.why().isBlank() ? "" : " – " + item.why().in(system);
                out.hanging(2, "□ ", item.what().in(system) + why);
            }
        }
    }

    private void footnotes(Footnotes notes) {
        if (!notes.weak().isEmpty()) {
            heading(Footnotes.MARK + " What rests on memory or assumption");
            for (Footnotes.Weak weak : notes.weak()) {
                out.hanging(2, "", weak.word() + ": " + String.join("; ", weak.what()) + ".");
            }
        }
        if (!notes.sources().isEmpty()) {
            heading("Sources");
            for (Source source : notes.sources()) {
                out.hanging(2, "· ", source.title());
            }
        }
    }

    private void heading(String text) {
        out.gap().strong(0, text);
    }
}
