package org.strawblue.app.service;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.strawblue.core.estimate.Finding;
import org.strawblue.core.quantity.Phrase;
import org.strawblue.core.quantity.Quantity;
import org.strawblue.core.spring.MeasuredSpring;
import org.strawblue.core.spring.Pocket;
import org.strawblue.core.spring.find.Candidate;
import org.strawblue.core.spring.find.Change;
import org.strawblue.core.spring.find.Finder;
import org.strawblue.core.spring.find.Found;

/** What does the drawer offer for this pocket? */
public final class SpringFindService {

    private static final int CHANGES = 3;
    private static final double SURE = 0.99;

    private SpringFindService() {}

    /** The likeliest to work first, those that do not work last, each with its reasons; then what would help. */
    public static Sheet find(List<MeasuredSpring> drawer, Pocket pocket) {
        Found found = Finder.find(pocket, drawer);
        Sheet.Builder sheet = Sheet.titled("Springs for " + pocket.name());
        int rank = 0;
        for (Candidate candidate : found.ranked()) {
            rank++;
            sheet.add(new Entry.Words(key(candidate, rank), label(candidate), words(candidate)));
        }
        sheet.findings(found.pocket());
        if (!found.pocket().stream().anyMatch(Finding.Stop.class::isInstance)) {
            sheet.findings(after(found));
        }
        return sheet.build();
    }

    private static String key(Candidate candidate, int rank) {
        int row = candidate.springs().get(0).row();
        boolean single = candidate.springs().size() == 1 && row > 0 && candidate.kind() != Candidate.Kind.SHIMMED;
        return single ? "row " + row : "choice " + rank;
    }

    private static String label(Candidate candidate) {
        return candidate.name();
    }

    private static Phrase words(Candidate candidate) {
        List<Phrase> parts = new ArrayList<>();
        if (candidate.works()) {
            parts.add(chance(candidate.probability()));
            parts.add(candidate.how());
            candidate.cautions().stream()
                    .filter(Finding.Caution.class::isInstance)
                    .map(Finding::what)
                    .map(SpringFindService::clause)
                    .forEach(parts::add);
        } else {
            boolean pair = candidate.kind() == Candidate.Kind.NESTED;
            parts.add(pair ? Phrases.joined(" ", Phrase.of("fails as a nest,"), candidate.how()) : Phrase.of("fails"));
            parts.addAll(candidate.failures());
        }
        return Phrases.joined("; ", parts);
    }

    /** Nothing is certain: what rounds to a whole is told as more than 99 %. */
    private static Phrase chance(double probability) {
        return probability > SURE
                ? Phrase.of("works, chance over {}", Quantity.fraction(SURE))
                : Phrase.of("works, chance {}", Quantity.fraction(probability));
    }

    /** A sentence as a part of one: no stop, a small letter. */
    private static Phrase clause(Phrase sentence) {
        String template = sentence.template();
        String bare = template.endsWith(".") ? template.substring(0, template.length() - 1) : template;
        boolean plain = bare.length() > 1 && !Character.isUpperCase(bare.charAt(1));
        String small = plain ? Character.toLowerCase(bare.charAt(0)) + bare.substring(1) : bare;
        return new Phrase(small, sentence.amounts());
    }

    private static List<Finding> after(Found found) {
        List<Finding> all = new ArrayList<>();
        best(found).ifPresent(all::addAll);
        if (!found.anyInDrawer()) {
            all.add(new Finding.Caution(
                    Phrase.of("Nothing in the drawer works here."),
                    Phrase.of("Each spring is named above with what stops it."),
                    Phrase.of("Wind one, or change the pocket.")));
            found.changes().stream().limit(CHANGES).map(Change::told).forEach(all::add);
        }
        if (found.passedOver() > 0) {
            all.add(new Finding.Note(
                    Phrase.of("{} more springs were judged and are not listed.", Quantity.number(found.passedOver())),
                    Phrase.of("So large a drawer is searched through, and the likeliest are told."),
                    Phrase.of("Ask  spring check  for one that you miss here.")));
        }
        return all;
    }

    private static Optional<List<Finding>> best(Found found) {
        return found.ranked().stream().filter(Candidate::works).findFirst().map(Candidate::cautions);
    }
}
