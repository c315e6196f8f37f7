package org.warmvat.cli.file;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.BooleanNode;
import com.fasterxml.jackson.databind.node.DoubleNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.LongNode;
import com.fasterxml.jackson.databind.node.NullNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Map;
import org.warmvat.design.keys.KeyPath;
import org.warmvat.design.keys.Shown;

/** One streaming pass over JSON text: keys, values and the line of each. */
final class JsonText {

    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private final JsonParser parser;
    private final Map<String, Integer> lines;
    private final Faults faults;

    private JsonText(JsonParser parser, Map<String, Integer> lines, Faults faults) {
        this.parser = parser;
        this.lines = lines;
        this.faults = faults;
    }

    /** The tree of a text; what cannot be taken is added to the faults. */
    static ObjectNode read(String text, Map<String, Integer> lines, Faults faults) {
        try (JsonParser parser = new JsonFactory().createParser(text)) {
            return new JsonText(parser, lines, faults).document();
        } catch (JsonProcessingException e) {
            int line = e.getLocation() == null ? 0 : e.getLocation().getLineNr();
            faults.addAtLine(
                    line,
                    "this is not JSON: "
                            + e.getOriginalMessage().lines().findFirst().orElse(""));
            return NODES.objectNode();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private ObjectNode document() throws IOException {
        lines.put("", 1);
        if (parser.nextToken() != JsonToken.START_OBJECT) {
            faults.addAtLine(
                    line(),
                    "a list or a single value, expected blocks of keys such as tank, envelope, feed and control");
            return NODES.objectNode();
        }
        ObjectNode root = block("", 0);
        if (parser.nextToken() != null) {
            faults.addAtLine(line(), "more after the closing bracket, expected the end");
        }
        return root;
    }

    private ObjectNode block(String path, int depth) throws IOException {
        ObjectNode block = NODES.objectNode();
        refuseTooDeep(depth);
        while (parser.nextToken() != JsonToken.END_OBJECT) {
            String key = parser.currentName();
            String at = KeyPath.key(path, key);
            int line = line();
            parser.nextToken();
            if (block.has(key)) {
                faults.addAtLine(line, at + " stands here again, first in line " + lines.get(at) + ", expected once");
                value(at + " again", depth);
            } else {
                lines.put(at, line);
                block.set(key, value(at, depth));
            }
        }
        return block;
    }

    private ArrayNode list(String path, int depth) throws IOException {
        ArrayNode list = NODES.arrayNode();
        refuseTooDeep(depth);
        while (parser.nextToken() != JsonToken.END_ARRAY) {
            String at = KeyPath.entry(path, list.size());
            lines.put(at, line());
            list.add(value(at, depth));
        }
        return list;
    }

    private JsonNode value(String path, int depth) throws IOException {
        return switch (parser.currentToken()) {
            case START_OBJECT -> block(path, depth + 1);
            case START_ARRAY -> list(path, depth + 1);
            case VALUE_TRUE, VALUE_FALSE -> BooleanNode.valueOf(parser.getBooleanValue());
            case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> number(path);
            case VALUE_STRING -> TextNode.valueOf(parser.getText());
            default -> NullNode.getInstance();
        };
    }

    private JsonNode number(String path) throws IOException {
        double value = Double.parseDouble(parser.getText());
        if (Double.isInfinite(value)) {
            faults.add(path, Shown.quoted(parser.getText()) + ", expected a number that is not so large");
            return NullNode.getInstance();
        }
        boolean whole = parser.currentToken() == JsonToken.VALUE_NUMBER_INT && Math.abs(value) < 1e15;
        return whole ? LongNode.valueOf((long) value) : DoubleNode.valueOf(value);
    }

    private void refuseTooDeep(int depth) {
        if (depth > FileTree.DEEPEST) {
            faults.addAtLine(line(), "blocks more than " + FileTree.DEEPEST + " deep, expected fewer");
            faults.refuseIfAny();
        }
    }

    private int line() {
        return parser.currentTokenLocation().getLineNr();
    }
}
