package org.warmvat.cli.file;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.NullNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.warmvat.design.keys.KeyPath;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.error.MarkedYAMLException;
import org.yaml.snakeyaml.error.YAMLException;
import org.yaml.snakeyaml.events.AliasEvent;
import org.yaml.snakeyaml.events.CollectionStartEvent;
import org.yaml.snakeyaml.events.Event;
import org.yaml.snakeyaml.events.MappingStartEvent;
import org.yaml.snakeyaml.events.NodeEvent;
import org.yaml.snakeyaml.events.ScalarEvent;
import org.yaml.snakeyaml.parser.Parser;
import org.yaml.snakeyaml.parser.ParserImpl;
import org.yaml.snakeyaml.reader.ReaderException;
import org.yaml.snakeyaml.reader.StreamReader;

/**
 * One streaming pass over YAML text: keys, values and the line of each.
 *
 * <p>It works on the parser's events, because only there an unquoted word can be told from a quoted one, an alias from its target and a
 * repeated key from its first. Only the plain part of YAML is taken: no anchors, merge keys, tags or second documents.
 */
final class YamlText {

    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private final Parser events;
    private final Map<String, Integer> lines;
    private final Faults faults;

    private YamlText(String text, Map<String, Integer> lines, Faults faults) {
        LoaderOptions options = new LoaderOptions();
        options.setNestingDepthLimit(FileTree.DEEPEST * 2);
        options.setCodePointLimit(SourceText.LARGEST_BYTES + 1);
        this.events = new ParserImpl(new StreamReader(text), options);
        this.lines = lines;
        this.faults = faults;
    }

    /** The tree of a text; what cannot be taken is added to the faults, and its place left empty. */
    static ObjectNode read(String text, Map<String, Integer> lines, Faults faults) {
        addTabs(text, faults);
        faults.refuseIfAny();
        try {
            return new YamlText(text, lines, faults).document();
        } catch (MarkedYAMLException e) {
            int line = e.getProblemMark() == null ? 0 : e.getProblemMark().getLine() + 1;
            faults.addAtLine(line, "this is not YAML: " + e.getProblem() + context(e));
        } catch (ReaderException e) {
            int line = 1
                    + (int) text.codePoints()
                            .limit(e.getPosition())
                            .filter(c -> c == '\n')
                            .count();
            faults.addAtLine(
                    line, String.format(Locale.ROOT, "control character 0x%02X, expected text", e.getCodePoint()));
        } catch (YAMLException e) {
            faults.addAtLine(0, "this is not YAML: " + e.getMessage());
        }
        return NODES.objectNode();
    }

    private static String context(MarkedYAMLException e) {
        return e.getContext() == null ? "" : " (" + e.getContext() + ")";
    }

    private static void addTabs(String text, Faults faults) {
        int number = 0;
        for (String line : text.lines().toList()) {
            number++;
            if (line.stripLeading().length() > 0
                    && line.substring(0, line.length() - line.stripLeading().length())
                                    .indexOf('\t')
                            >= 0) {
                faults.addAtLine(number, "a tab before the key, expected spaces");
            }
        }
    }

    private ObjectNode document() {
        lines.put("", 1);
        Event first = next();
        while (first.is(Event.ID.StreamStart) || first.is(Event.ID.DocumentStart)) {
            first = next();
        }
        if (!(first instanceof MappingStartEvent)) {
            String found = first instanceof ScalarEvent
                    ? "a single value"
                    : first.is(Event.ID.StreamEnd) ? "nothing" : "a list";
            faults.addAtLine(line(first), found + ", expected blocks of keys such as tank, envelope, feed and control");
            return NODES.objectNode();
        }
        ObjectNode root = block("", first, 0);
        next();
        Event after = next();
        if (after.is(Event.ID.DocumentStart)) {
            faults.addAtLine(line(after), "a second document starts here (---), expected one document");
        }
        return root;
    }

    private ObjectNode block(String path, Event start, int depth) {
        ObjectNode block = NODES.objectNode();
        refuseTooDeep(start, depth);
        for (Event event = next(); !event.is(Event.ID.MappingEnd); event = next()) {
            String key = event instanceof ScalarEvent scalar ? scalar.getValue() : null;
            if (key == null) {
                faults.addAtLine(line(event), "a list, block or alias in the place of a key, expected a name");
                skip(event);
                value(path + ".?", next(), depth);
                continue;
            }
            String at = KeyPath.key(path, key);
            Integer before = block.has(key) ? lines.get(at) : null;
            if (before == null) {
                lines.put(at, line(event));
                block.set(key, value(at, next(), depth));
                refuseMerge(at, key);
            } else {
                faults.addAtLine(line(event), at + " stands here again, first in line " + before + ", expected once");
                value(at + " again", next(), depth);
            }
        }
        return block;
    }

    private void refuseMerge(String at, String key) {
        if (key.equals("<<")) {
            faults.add(at, "is a merge key, expected the keys themselves written out");
        }
    }

    private JsonNode value(String path, Event event, int depth) {
        refuseAnchorOrTag(path, event);
        lines.putIfAbsent(path, line(event));
        if (event instanceof MappingStartEvent) {
            return block(path, event, depth + 1);
        }
        if (event instanceof CollectionStartEvent) {
            return list(path, event, depth + 1);
        }
        return event instanceof ScalarEvent scalar ? scalar(path, scalar) : NullNode.getInstance();
    }

    private ArrayNode list(String path, Event start, int depth) {
        ArrayNode list = NODES.arrayNode();
        refuseTooDeep(start, depth);
        for (Event event = next(); !event.is(Event.ID.SequenceEnd); event = next()) {
            list.add(value(KeyPath.entry(path, list.size()), event, depth));
        }
        return list;
    }

    private JsonNode scalar(String path, ScalarEvent scalar) {
        if (!scalar.isPlain()) {
            return TextNode.valueOf(scalar.getValue());
        }
        Optional<String> trap = PlainScalar.trap(scalar.getValue());
        trap.ifPresent(text -> faults.add(path, text));
        return trap.isPresent() ? NullNode.getInstance() : PlainScalar.value(scalar.getValue());
    }

    private void refuseAnchorOrTag(String path, Event event) {
        if (event instanceof AliasEvent alias) {
            faults.add(path, "*" + alias.getAnchor() + " is an alias, expected the value itself written out");
        } else if (event instanceof NodeEvent node && node.getAnchor() != null) {
            faults.add(
                    path, "&" + node.getAnchor() + " is an anchor, expected none: write the value out in each place");
        }
        String tag = event instanceof ScalarEvent scalar
                ? scalar.getTag()
                : event instanceof CollectionStartEvent start ? start.getTag() : null;
        if (tag != null && !tag.equals("!")) {
            faults.add(path, "carries the tag " + tag + ", expected none");
        }
    }

    private void refuseTooDeep(Event start, int depth) {
        if (depth > FileTree.DEEPEST) {
            faults.addAtLine(line(start), "blocks more than " + FileTree.DEEPEST + " deep, expected fewer");
            faults.refuseIfAny();
        }
    }

    /** Reads over a key that is no plain name. */
    private void skip(Event event) {
        if (event instanceof CollectionStartEvent) {
            int open = 1;
            while (open > 0) {
                Event inner = next();
                open += inner instanceof CollectionStartEvent ? 1 : 0;
                open -= inner.is(Event.ID.MappingEnd) || inner.is(Event.ID.SequenceEnd) ? 1 : 0;
            }
        }
    }

    private Event next() {
        return events.getEvent();
    }

    private static int line(Event event) {
        return event.getStartMark().getLine() + 1;
    }
}
