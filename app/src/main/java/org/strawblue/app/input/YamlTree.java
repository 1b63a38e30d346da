package org.strawblue.app.input;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Parse;
import org.snakeyaml.engine.v2.events.AliasEvent;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.events.ScalarEvent;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;

/**
 * Builds a {@link YamlNode} from the parser's events, so that each piece keeps its place. References are refused: a job
 * file is written out in full, and a reference to itself or a nest of them could not be.
 */
final class YamlTree {

    private static final int DEEPEST = 12;
    private static final int LONGEST = 1 << 18;

    private final TextFile file;
    private final Iterator<Event> events;

    private YamlTree(TextFile file) {
        this.file = file;
        LoadSettings settings = LoadSettings.builder()
                .setLabel(file.name())
                .setCodePointLimit(LONGEST)
                .build();
        this.events = new Parse(settings).parseString(answered(file.text())).iterator();
    }

    /** A lone question mark means a mapping to YAML, but "not known" to a person. Its stand-in is as long: places hold. */
    private static String answered(String text) {
        return text.indexOf('?') < 0 ? text : Lone.QUESTION.matcher(text).replaceAll("$1¿");
    }

    private static final class Lone {

        static final Pattern QUESTION = Pattern.compile("(?m)(:[ \\t]+|^[ \\t]*-[ \\t]+)\\?(?=[ \\t]*(?:#.*)?\\r?$)");
    }

    static Read<YamlNode> read(TextFile file) {
        try {
            return new YamlTree(file).document();
        } catch (MarkedYamlEngineException e) {
            return Read.failed(syntax(file, e));
        } catch (YamlEngineException e) {
            return Read.failed(new Problem(
                    Place.of(file.name()),
                    file.text().length() > LONGEST ? "more than 256 kB" : "signs that do not belong in a text",
                    "a job file of a few pages",
                    Optional.empty(),
                    "Check that this is the right file, saved as plain text in UTF-8."));
        } catch (Stopped e) {
            return Read.failed(e.problem);
        }
    }

    private Read<YamlNode> document() throws Stopped {
        while (events.hasNext()) {
            Event event = events.next();
            switch (event.getEventId()) {
                case StreamStart, DocumentStart, Comment -> {}
                case StreamEnd, DocumentEnd -> {
                    return Read.failed(empty());
                }
                default -> {
                    YamlNode root = node(event, 0);
                    afterwards();
                    return new Read<>(Optional.of(root), List.of(), List.of());
                }
            }
        }
        return Read.failed(empty());
    }

    /** The rest of the file is read too, for its errors; a second document is one. */
    private void afterwards() throws Stopped {
        while (events.hasNext()) {
            Event event = events.next();
            if (event.getEventId() == Event.ID.DocumentStart) {
                throw stop(event, "---", "one job in each file", "Put the second job in a file of its own.");
            }
        }
    }

    private YamlNode node(Event event, int depth) throws Stopped {
        if (depth > DEEPEST) {
            throw stop(
                    event,
                    "too many levels",
                    "a job file, which has five levels at most",
                    "Take the inner brackets away.");
        }
        if (event instanceof AliasEvent alias) {
            throw stop(
                    event,
                    "*" + alias.getAlias(),
                    "the thing itself",
                    "References are not used here: write it out in full.");
        }
        return switch (event.getEventId()) {
            case MappingStart -> map(event, depth);
            case SequenceStart -> list(event, depth);
            default -> scalar((ScalarEvent) event);
        };
    }

    private YamlNode map(Event start, int depth) throws Stopped {
        List<YamlNode.Entry> entries = new ArrayList<>();
        for (Event event = events.next(); event.getEventId() != Event.ID.MappingEnd; event = events.next()) {
            YamlNode key = node(event, depth + 1);
            YamlNode value = node(events.next(), depth + 1);
            if (!(key instanceof YamlNode.Scalar name)) {
                throw stop(
                        event, "a list or group", "a word, then a colon", "Write one word or phrase before the colon.");
            }
            entries.add(new YamlNode.Entry(name, value));
        }
        return new YamlNode.MapNode(entries, place(start));
    }

    private YamlNode list(Event start, int depth) throws Stopped {
        List<YamlNode> items = new ArrayList<>();
        for (Event event = events.next(); event.getEventId() != Event.ID.SequenceEnd; event = events.next()) {
            items.add(node(event, depth + 1));
        }
        return new YamlNode.ListNode(items, place(start));
    }

    private YamlNode scalar(ScalarEvent event) {
        Place whole = place(event);
        String text = event.getValue().equals("¿") ? "?" : event.getValue();
        boolean quoted = event.isSQuoted() || event.isDQuoted();
        int quote = quoted ? 1 : 0;
        Place inner = file.place(whole.line(), whole.column() + quote, whole.endColumn() - quote);
        return new YamlNode.Scalar(text, inner);
    }

    private Place place(Event event) {
        Optional<Mark> start = event.getStartMark();
        Optional<Mark> end = event.getEndMark();
        if (start.isEmpty()) {
            return Place.of(file.name());
        }
        int line = start.get().getLine() + 1;
        int column = start.get().getColumn() + 1;
        boolean oneLine = end.isPresent() && end.get().getLine() + 1 == line;
        int lineEnd = line <= file.lines().size() ? file.lines().get(line - 1).length() + 1 : column + 1;
        return file.place(line, column, oneLine ? end.get().getColumn() + 1 : lineEnd);
    }

    private Problem empty() {
        return new Problem(
                Place.of(file.name()),
                "nothing",
                "a job: a title, parts and a shop",
                Optional.empty(),
                "Start from one of the files in examples/.");
    }

    private static Problem syntax(TextFile file, MarkedYamlEngineException e) {
        Place found = place(file, e.getProblemMark());
        // what is open to the end of the file is shown where it was opened
        Place place = found.text().isBlank() ? place(file, e.getContextMark()) : found;
        int at = place.column() - 1;
        String rest = at >= 0 && at < place.text().length()
                ? place.text().substring(at).strip()
                : "";
        return new Problem(
                place,
                rest.isEmpty() ? "end of line" : rest,
                "lines of the form  key: value",
                Optional.empty(),
                SyntaxRemedy.of(place, e.getContext() + " " + e.getProblem()));
    }

    private static Place place(TextFile file, Optional<Mark> mark) {
        return mark.map(m -> file.place(m.getLine() + 1, m.getColumn() + 1, m.getColumn() + 2))
                .orElse(Place.of(file.name()));
    }

    private Stopped stop(Event event, String read, String expected, String remedy) {
        return new Stopped(new Problem(place(event), read, expected, Optional.empty(), remedy));
    }

    /** Ends the reading of the tree. */
    private static final class Stopped extends Exception {
        private static final long serialVersionUID = 1L;
        private final transient Problem problem;

        Stopped(Problem problem) {
            super(problem.expected(), null, false, false);
            this.problem = problem;
        }
    }
}
