package org.strawblue.core.evidence;

import java.util.List;

/** A means to tell how hard a part is. */
public sealed interface HardnessCheck {

    /** A good ordinary file. */
    record CommonFile() implements HardnessCheck {}

    /** Files hardened to known levels [HRC], rising. An empty list stands for the usual set. */
    record GradedFiles(List<Double> levels) implements HardnessCheck {
        public GradedFiles {
            levels = levels.stream().sorted().toList();
        }
    }

    /** A ball pressed into the part and into a piece of known hardness at once, the dents compared. */
    record IndentComparison() implements HardnessCheck {}

    /** A bench tester with a C scale. */
    record Tester() implements HardnessCheck {}
}
