package org.warmvat.cli.file;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.StringReader;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.warmvat.design.keys.KeyPath;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.ScalarNode;
import org.yaml.snakeyaml.nodes.SequenceNode;

/**
 * The text of a design, read once, in which single values are exchanged, put in or taken out while all else stays as it was written, comments and
 * the order of keys too. What is taken out goes with the comments in its own lines; any other change that would lose one is refused.
 */
public final class DesignText {

    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final Pattern WORD = Pattern.compile("[A-Za-z][A-Za-z0-9_]*");
    private static final Pattern READ_OTHERWISE = Pattern.compile("(?i)true|false|yes|no|on|off|null|y|n");

    private static final Pattern REMARK = Pattern.compile("(^|\\s)#");

    private final String name;
    private final String text;
    private final ObjectNode keys;
    private final Map<String, Integer> lines;

    private DesignText(String name, String text, ObjectNode keys, Map<String, Integer> lines) {
        this.name = name;
        this.text = text;
        this.keys = keys;
        this.lines = lines;
    }

    /**
     * Reads the keys of a text, be their values allowed or not.
     *
     * @param name name for messages; one that ends in {@code .json} is read as JSON
     * @param text the text
     * @throws InputRefused when it cannot be read
     */
    public static DesignText of(String name, String text) {
        Map<String, Integer> lines = new HashMap<>();
        Faults faults = new Faults(name, lines);
        ObjectNode keys = DesignDocument.tree(name, text, lines, faults);
        faults.refuseIfAny();
        return new DesignText(name, text, keys, lines);
    }

    /**
     * The text with one value exchanged, or put in where the key is not there.
     *
     * @param path the key's path; the position behind the last entry of a list adds one
     * @param value the value as JSON; empty takes the key or entry out
     * @throws InputRefused when the text cannot take the change without losing something
     */
    public DesignText with(String path, String value) {
        ObjectNode wanted = keys.deepCopy();
        List<String> steps = steps(name, path);
        JsonNode node = value.isEmpty() ? null : json(name, value);
        if (!changed(wanted, steps, node)) {
            throw refused(name, path + " is no place of this design");
        }
        if (DesignDocument.isJson(name, text)) {
            return of(name, PlainTree.pretty(wanted));
        }
        DesignText edited = of(name, new Edit(text).with(steps, node));
        if (same(wanted, edited.keys)) {
            return edited;
        }
        throw refused(
                name,
                path
                        + " cannot be changed here without losing something of the text, expected the change in the text itself");
    }

    /**
     * The design that it says.
     *
     * @throws InputRefused with every fault, up to twenty
     */
    public DesignDocument document() {
        return DesignDocument.of(name, keys, new Faults(name, lines));
    }

    /** Its name for messages. */
    public String name() {
        return name;
    }

    /** The text. */
    public String text() {
        return text;
    }

    /** The keys and values as JSON in one line. */
    public String tree() {
        return keys.toString();
    }

    private static boolean same(JsonNode wanted, JsonNode found) {
        return wanted.equals(DesignText::unequal, found);
    }

    /** Numbers are the same with and without a decimal point. */
    private static int unequal(JsonNode one, JsonNode other) {
        boolean same = (one.isNumber() && other.isNumber())
                ? one.decimalValue().compareTo(other.decimalValue()) == 0
                : one.equals(other);
        return same ? 0 : 1;
    }

    private static List<String> steps(String name, String path) {
        try {
            return KeyPath.steps(path);
        } catch (IllegalArgumentException noPath) {
            throw refused(name, noPath.getMessage());
        }
    }

    private static JsonNode json(String name, String value) {
        try {
            return JSON.readTree(value);
        } catch (IOException noJson) {
            throw refused(name, "a value is no JSON");
        }
    }

    private static InputRefused refused(String name, String fact) {
        return new InputRefused(name + ": " + fact);
    }

    /** Makes the change in a tree, a null value takes out; whether there is such a place. */
    private static boolean changed(JsonNode root, List<String> steps, JsonNode value) {
        JsonNode at = root;
        for (int i = 0; i < steps.size() - 1; i++) {
            JsonNode next = at.isArray() ? at.get(index(steps.get(i))) : at.get(steps.get(i));
            if (next == null || !next.isContainerNode()) {
                next = steps.get(i + 1).startsWith("[") ? NODES.arrayNode() : NODES.objectNode();
                if (!put(at, steps.get(i), next)) {
                    return false;
                }
            }
            at = next;
        }
        return put(at, steps.get(steps.size() - 1), value);
    }

    private static boolean put(JsonNode at, String step, JsonNode value) {
        if (at instanceof ObjectNode block && !step.startsWith("[")) {
            if (value == null) {
                block.remove(step);
            } else {
                block.set(step, value);
            }
            return true;
        }
        return at instanceof ArrayNode list && put(list, index(step), value);
    }

    /** The place behind the last entry takes a new one. */
    private static boolean put(ArrayNode list, int place, JsonNode value) {
        if (place < 0 || place > list.size() || (value == null && place == list.size())) {
            return false;
        }
        if (value == null) {
            list.remove(place);
        } else if (place < list.size()) {
            list.set(place, value);
        } else {
            list.add(value);
        }
        return true;
    }

    /** The number of an entry; negative where the step is none. */
    private static int index(String step) {
        return step.matches("\\[[0-9]{1,4}]") ? Integer.parseInt(step.substring(1, step.length() - 1)) : -1;
    }

    /** One line of YAML. */
    private static String written(JsonNode value) {
        if (value.isObject()) {
            return value.properties().stream()
                    .map(entry -> word(entry.getKey()) + ": " + written(entry.getValue()))
                    .collect(Collectors.joining(", ", "{", "}"));
        }
        if (value.isArray()) {
            return value.valueStream().map(DesignText::written).collect(Collectors.joining(", ", "[", "]"));
        }
        if (value.isNumber()) {
            return value.decimalValue().stripTrailingZeros().toPlainString();
        }
        return value.isTextual() ? word(value.textValue()) : value.toString();
    }

    private static String word(String text) {
        boolean plain =
                WORD.matcher(text).matches() && !READ_OTHERWISE.matcher(text).matches();
        return plain ? text : NODES.textNode(text).toString();
    }

    /** A change of one text. */
    private static final class Edit {
        private final String text;
        private final int[] at;

        /** A key with its value, or an entry of a list; {@code from} is where it begins. */
        private record Part(Node from, Node value) {}

        Edit(String text) {
            this.text = text;
            // marks count code points
            this.at = new int[text.codePointCount(0, text.length()) + 1];
            for (int i = 0, offset = 0; i < at.length; i++) {
                at[i] = offset;
                offset += offset < text.length() ? Character.charCount(text.codePointAt(offset)) : 0;
            }
        }

        /** The changed text, or the same text where it cannot be changed. */
        String with(List<String> steps, JsonNode value) {
            Node node = new Yaml(new LoaderOptions()).compose(new StringReader(text));
            for (int i = 0; i < steps.size(); i++) {
                boolean last = i == steps.size() - 1;
                int place = place(node, steps.get(i));
                Node next = place < 0 ? null : parts(node).get(place).value();
                if (last && next != null && value != null) {
                    boolean remarked = !(next instanceof ScalarNode) && hasRemark(start(next), end(next));
                    return remarked ? text : cut(start(next), end(next), space(start(next)) + written(value));
                }
                if (last && next != null) {
                    return without(node, place);
                }
                if (next == null || next instanceof ScalarNode) {
                    return value == null ? text : added(node, next, steps.subList(i, steps.size()), value);
                }
                node = next;
            }
            return text;
        }

        private String cut(int from, int to, String put) {
            return text.substring(0, from) + put + text.substring(to);
        }

        private String space(int from) {
            return from > 0 && text.charAt(from - 1) == ':' ? " " : "";
        }

        private int start(Node node) {
            return at[node.getStartMark().getIndex()];
        }

        /** The end of what is written; the parser's end of a block lies behind the comments that follow it. */
        private int end(Node node) {
            List<Part> parts = parts(node);
            return parts.isEmpty() || isFlow(node)
                    ? at[node.getEndMark().getIndex()]
                    : end(parts.get(parts.size() - 1).value());
        }

        private boolean isFlow(Node node) {
            char first = text.charAt(start(node));
            return first == '{' || first == '[';
        }

        /** What stands in a block or list; nothing in a word. */
        private static List<Part> parts(Node node) {
            if (node instanceof MappingNode map) {
                return map.getValue().stream()
                        .map(tuple -> new Part(tuple.getKeyNode(), tuple.getValueNode()))
                        .toList();
            }
            return node instanceof SequenceNode list
                    ? list.getValue().stream()
                            .map(entry -> new Part(entry, entry))
                            .toList()
                    : List.of();
        }

        /** Where a step leads among the parts; negative where there is no such. */
        private static int place(Node node, String step) {
            List<Part> parts = parts(node);
            if (node instanceof SequenceNode) {
                return index(step) < parts.size() ? index(step) : -1;
            }
            return IntStream.range(0, parts.size())
                    .filter(i -> parts.get(i).from() instanceof ScalarNode name
                            && name.getValue().equals(step))
                    .findFirst()
                    .orElse(-1);
        }

        /** Puts a key or entry that is not there, with all that it stands in. */
        private String added(Node into, Node word, List<String> steps, JsonNode value) {
            JsonNode put = value;
            if (steps.size() > 1) {
                put = steps.get(1).startsWith("[") ? NODES.arrayNode() : NODES.objectNode();
                changed(put, steps.subList(1, steps.size()), value);
            }
            if (word != null) {
                return cut(start(word), end(word), space(start(word)) + written(put));
            }
            String entry = (into instanceof SequenceNode ? "" : word(steps.get(0)) + ": ") + written(put);
            if (isFlow(into)) {
                int end = at[into.getEndMark().getIndex()] - 1;
                return cut(end, end, (parts(into).isEmpty() ? "" : ", ") + entry);
            }
            String lead = " ".repeat(into.getStartMark().getColumn()) + (into instanceof SequenceNode ? "- " : "");
            int end = endOfLine(end(into));
            return cut(end, end, "\n" + lead + entry);
        }

        private int endOfLine(int from) {
            int end = from > 0 && text.charAt(from - 1) == '\n' ? from - 1 : text.indexOf('\n', from);
            return end < 0 ? text.length() : end;
        }

        /** Takes a key or entry out with its lines; the last one leaves an empty block or list. */
        private String without(Node node, int place) {
            List<Part> parts = parts(node);
            boolean isMap = node instanceof MappingNode;
            if (parts.size() == 1) {
                return cut(start(node), end(node), space(start(node)) + (isMap ? "{}" : "[]"));
            }
            int begin = start(parts.get(place).from());
            int end = end(parts.get(place).value());
            if (isFlow(node)) {
                int from = place == 0 ? begin : end(parts.get(place - 1).value());
                int to = place == 0 ? start(parts.get(1).from()) : end;
                return hasRemark(from, to) ? text : cut(from, to, "");
            }
            if (isMap && place == 0 && begin == start(node) && !isFirstOfLine(begin)) {
                return cut(begin, start(parts.get(1).from()), "");
            }
            int lineBegin = text.lastIndexOf('\n', begin - 1) + 1;
            return cut(lineBegin, Math.min(text.length(), endOfLine(end) + 1), "");
        }

        private boolean hasRemark(int from, int to) {
            return REMARK.matcher(text.substring(from, to)).find();
        }

        private boolean isFirstOfLine(int offset) {
            return text.substring(text.lastIndexOf('\n', offset - 1) + 1, offset)
                    .isBlank();
        }
    }
}
