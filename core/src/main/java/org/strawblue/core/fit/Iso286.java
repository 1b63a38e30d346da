package org.strawblue.core.fit;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.strawblue.core.estimate.Answer;

/** Hole and shaft by letter and grade: {@code H7/g6}. Source: ISO 286-1, see {@link Limits}. */
final class Iso286 implements FitStandard {

    private static final Pattern PAIR =
            Pattern.compile("\\s*((?:JS|Js|[A-Z])\\s*\\d{1,2})\\s*[/ -]\\s*((?:js|[a-z])\\s*\\d{1,2})\\s*");

    @Override
    public boolean reads(String designation) {
        return PAIR.matcher(designation).matches();
    }

    @Override
    public Answer<Fit> fit(double nominal, String designation) {
        Matcher pair = PAIR.matcher(designation);
        if (!pair.matches()) {
            return Answer.refused(FitFindings.unknown(designation));
        }
        String hole = pair.group(1).replace(" ", "");
        String shaft = pair.group(2).replace(" ", "");
        return Limits.of(nominal, hole)
                .then(h -> Limits.of(nominal, shaft)
                        .map(s -> new Fit(hole + "/" + shaft, nominal, h, s, bases(nominal, hole, shaft))));
    }

    private static List<org.strawblue.core.source.Basis> bases(double nominal, String hole, String shaft) {
        return java.util.stream.Stream.of(hole, shaft)
                .flatMap(zone -> Limits.bases(nominal, zone).stream())
                .distinct()
                .toList();
    }
}
