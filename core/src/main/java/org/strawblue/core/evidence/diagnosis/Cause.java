package org.strawblue.core.evidence.diagnosis;

import java.util.List;
import org.strawblue.core.source.Basis;

/**
 * What may be behind it.
 *
 * @param weight share among cases as they come [1]
 * @param check what the program can reckon of it; blank where it cannot
 * @param title in one sentence
 * @param remedy the smallest step that puts it right
 * @param hazards keys of the cautions that belong to the remedy
 */
public record Cause(
        String key, double weight, String check, String title, String remedy, List<String> hazards, Basis basis) {

    public Cause {
        hazards = List.copyOf(hazards);
    }
}
