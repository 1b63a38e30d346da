package org.strawblue.app.proof;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.strawblue.core.source.Bibliography;
import org.strawblue.core.source.Source;

/** The verification table in each of its forms. */
public record ProofReport(Proof proof) {

    private static final List<String> COLUMNS =
            List.of("verdict", "case", "ours", "published", "unit", "difference", "tolerance", "source", "standing");

    public String terminal() {
        List<List<String>> rows = new ArrayList<>();
        rows.add(COLUMNS);
        proof.verdicts().forEach(v -> rows.add(cells(v)));
        return Columns.align(rows) + "\n" + summary() + "\n";
    }

    public String csv() {
        StringBuilder out = new StringBuilder(String.join(",", COLUMNS)).append(",what,control,fault\n");
        for (Verdict v : proof.verdicts()) {
            List<String> cells = new ArrayList<>(cells(v));
            cells.add(v.check().what());
            cells.add(String.valueOf(v.check().control()));
            cells.add(v.fault());
            out.append(String.join(",", cells.stream().map(ProofReport::quoted).toList()))
                    .append('\n');
        }
        return out.toString();
    }

    public String json() {
        return ProofJson.of(proof);
    }

    /** The page of the science book. */
    public String markdown() {
        StringBuilder out = new StringBuilder("# The verification table\n\n")
                .append("Written by `./strawblue proof --page`; do not edit. Each row is one case of `cases/`: what an"
                        + " outside source says, what the program computes, and how far apart the two may be."
                        + " A control is wrong on purpose and must miss, to show that the check can fail.\n\n")
                .append(summary())
                .append("\n\n| verdict | what | ours | published | unit | difference | tolerance | source |\n")
                .append("|---|---|---:|---:|---|---:|---:|---|\n");
        proof.verdicts().forEach(v -> out.append(markdownRow(v)));
        out.append("\n## Sources checked against\n\n");
        proof.outsideSources().forEach(s -> out.append("- ").append(line(s)).append('\n'));
        return out.toString();
    }

    public String summary() {
        long failing = proof.failing().size();
        return proof.checks() + " checks against " + proof.outsideSources().size() + " outside sources, "
                + proof.controls() + " controls; " + (failing == 0 ? "none failing" : failing + " FAILING");
    }

    private static List<String> cells(Verdict v) {
        Case c = v.check();
        return List.of(
                word(v),
                c.id(),
                v.fault().isEmpty() ? v.ours() : v.fault(),
                published(c),
                c.unit(),
                difference(v),
                tolerance(c),
                c.source(),
                c.standing().word());
    }

    /** What came of it, a control's miss being as it must be. */
    static String word(Verdict v) {
        if (!v.passed()) {
            return "FAIL";
        }
        return v.check().control() ? "misses, as it must" : "pass";
    }

    static String published(Case c) {
        if (c.expected() instanceof Expected.Value value) {
            return number(value.value());
        }
        if (c.expected() instanceof Expected.Range range) {
            return number(range.low()) + ".." + number(range.high());
        }
        return ((Expected.Word) c.expected()).text();
    }

    private static String tolerance(Case c) {
        return c.expected() instanceof Expected.Value value ? number(value.tolerance()) : "";
    }

    private static String difference(Verdict v) {
        return v.difference().isPresent()
                ? String.format(Locale.ROOT, "%+.2g", v.difference().getAsDouble())
                : "";
    }

    private static String markdownRow(Verdict v) {
        List<String> cells = cells(v);
        Case c = v.check();
        String source = Bibliography.find(c.source()).map(Source::title).orElse(c.source());
        return "| "
                + String.join(
                        " | ",
                        word(v),
                        c.what(),
                        cells.get(2),
                        cells.get(3),
                        c.unit(),
                        cells.get(5),
                        cells.get(6),
                        source + " (" + c.standing().word() + ")")
                + " |\n";
    }

    private static String line(Source source) {
        return source.address().isEmpty() ? source.title() : source.title() + ", <" + source.address() + ">";
    }

    private static String number(double value) {
        String text = String.format(Locale.ROOT, "%.9g", value);
        return text.contains("e") ? String.valueOf(value) : text.replaceFirst("\\.?0+$", "");
    }

    private static String quoted(String cell) {
        return cell.matches("[^,\"\n]*") ? cell : "\"" + cell.replace("\"", "\"\"") + "\"";
    }
}
