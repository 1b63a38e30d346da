package org.strawblue.app.table;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.strawblue.app.input.Place;
import org.strawblue.app.input.Problem;

/** The columns of a file: which of them are ours and where they stand. */
record Columns(List<String> names, Map<String, Column> known) {

    /** @param heading what its first line says of it */
    record Column(int index, Heading heading) {}

    static Columns of(List<String> names) {
        Map<String, Column> known = new LinkedHashMap<>();
        for (int i = 0; i < names.size(); i++) {
            int index = i;
            Heading.read(names.get(i)).ifPresent(h -> known.putIfAbsent(h.column(), new Column(index, h)));
        }
        return new Columns(List.copyOf(names), known);
    }

    Optional<Column> find(String column) {
        return Optional.ofNullable(known.get(column));
    }

    /** A problem for each thing that none of the columns gives. */
    List<Problem> missing(String file, List<List<String>> needs) {
        List<Problem> problems = new ArrayList<>();
        for (List<String> oneOf : needs) {
            if (oneOf.stream().noneMatch(known::containsKey)) {
                problems.add(missing(file, oneOf, String.join(",", names)));
            }
        }
        return problems;
    }

    private Problem missing(String file, List<String> oneOf, String line) {
        String wanted = String.join(" or ", oneOf);
        Optional<String> near = names.stream()
                .filter(n -> Heading.read(n).isEmpty())
                .filter(n -> Heading.nearest(n).isPresent())
                .findFirst();
        return new Problem(
                new Place(file, 1, 1, Math.max(2, line.length() + 1), line),
                names.stream().collect(Collectors.joining(", ")),
                "a column " + wanted,
                near.map(n -> oneOf.get(0) + " for " + n),
                "Name a column in the first line " + wanted
                        + "; its unit may follow, as in temperature_c or time (h).");
    }
}
