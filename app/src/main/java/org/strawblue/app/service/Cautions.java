package org.strawblue.app.service;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.strawblue.core.job.Hazard;
import org.strawblue.core.job.Hazards;
import org.strawblue.core.quantity.Phrase;

/** Puts cautions right below the step they belong to: in full the first time, then in short. */
final class Cautions {

    private final Sheet.Builder sheet;
    private final Set<String> told = new HashSet<>();

    Cautions(Sheet.Builder sheet) {
        this.sheet = sheet;
    }

    /**
     * @param step key of the entry above
     * @param keys of the cautions
     */
    void beside(String step, List<String> keys) {
        List<Hazard> again = new ArrayList<>();
        int place = 0;
        for (Hazard hazard : Hazards.of(keys.toArray(String[]::new))) {
            if (told.add(hazard.key())) {
                place++;
                add(step + "_caution_" + place, hazard.text());
            } else {
                again.add(hazard.reminder());
            }
        }
        for (Hazard hazard : again) {
            place++;
            add(step + "_caution_" + place, hazard.text());
        }
    }

    private void add(String key, String text) {
        sheet.add(new Entry.Words(key, "▲ Caution", Phrase.of(text)));
    }
}
