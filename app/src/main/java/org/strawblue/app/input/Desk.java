package org.strawblue.app.input;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.strawblue.core.estimate.Finding;
import org.strawblue.core.job.UnitSystem;
import org.strawblue.core.job.Unknown;

/** Where the problems, the unknowns and the assumptions of one reading are put down as they are met. */
final class Desk {

    private final List<Problem> problems = new ArrayList<>();
    private final List<Unknown> unknowns = new ArrayList<>();
    private final List<String> notes = new ArrayList<>();
    private final List<Finding> findings = new ArrayList<>();
    private UnitSystem units = UnitSystem.METRIC;

    /** From here on a number without a unit is meant so. */
    void units(UnitSystem meant) {
        units = meant;
    }

    UnitSystem units() {
        return units;
    }

    void problem(Problem problem) {
        problems.add(problem);
    }

    void problem(Place place, String read, String expected, String remedy) {
        problems.add(new Problem(place, read, expected, Optional.empty(), remedy));
    }

    void unknown(String path, String what) {
        unknowns.add(new Unknown(path, what));
    }

    void note(String note) {
        if (!notes.contains(note)) {
            notes.add(note);
        }
    }

    void findings(List<Finding> how) {
        findings.addAll(how);
    }

    List<Finding> findings() {
        return findings;
    }

    boolean clean() {
        return problems.isEmpty();
    }

    List<Problem> problems() {
        return problems;
    }

    List<Unknown> unknowns() {
        return unknowns;
    }

    List<String> notes() {
        return notes;
    }
}
