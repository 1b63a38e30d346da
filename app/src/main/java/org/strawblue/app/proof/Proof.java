package org.strawblue.app.proof;

import java.nio.file.Path;
import java.util.List;
import org.strawblue.core.source.Bibliography;
import org.strawblue.core.source.Source;

/** The verification table as a whole. */
public record Proof(List<Verdict> verdicts) {

    public Proof {
        verdicts = List.copyOf(verdicts);
    }

    /** Runs every case of a folder. */
    public static Proof of(Path folder) {
        return new Proof(new ProofRunner(Operations.all()).run(CaseFile.readAll(folder)));
    }

    public long checks() {
        return verdicts.stream().filter(v -> !v.check().control()).count();
    }

    public long controls() {
        return verdicts.size() - checks();
    }

    public List<Verdict> failing() {
        return verdicts.stream().filter(v -> !v.passed()).toList();
    }

    /** The distinct sources outside this project that checks are made against. */
    public List<Source> outsideSources() {
        return verdicts.stream()
                .map(Verdict::check)
                .filter(c -> !c.control() && c.outside())
                .map(Case::source)
                .distinct()
                .sorted()
                .map(key -> Bibliography.find(key).orElseThrow())
                .toList();
    }
}
