package org.warmvat.design.keys;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;

/** Defaults as keys state them, in one line: {@code 2.0}, {@code legs}, {@code [{start: 08:00, hours: 3}]}; text with commas or braces stands in single quotes. */
final class Flow {

    private static final Pattern NUMBER = Pattern.compile("-?[0-9.]+([eE]-?[0-9]+)?");

    private final String text;
    private int at;

    private Flow(String text) {
        this.text = text;
    }

    /** The value of a line: a map, a list, a number, true or false, or text. */
    static Object parse(String line) {
        return new Flow(line).value();
    }

    /** The same of a line that states a block. */
    @SuppressWarnings("unchecked") // a block's keys are texts by grammar
    static Map<String, Object> block(String line) {
        return line.startsWith("{") ? (Map<String, Object>) parse(line) : Map.of();
    }

    private Object value() {
        return switch (text.charAt(at)) {
            case '{' -> map();
            case '[' -> list();
            case '\'' -> quoted();
            default -> scalar(word(",]}"));
        };
    }

    private String quoted() {
        at++;
        String word = word("'");
        at++;
        return word;
    }

    private Map<String, Object> map() {
        Map<String, Object> map = new LinkedHashMap<>();
        at++;
        while (text.charAt(at) != '}') {
            String key = word(":");
            at += 2;
            map.put(key, value());
            skipComma();
        }
        at++;
        return Collections.unmodifiableMap(map);
    }

    private List<Object> list() {
        List<Object> list = new ArrayList<>();
        at++;
        while (text.charAt(at) != ']') {
            list.add(value());
            skipComma();
        }
        at++;
        return Collections.unmodifiableList(list);
    }

    private void skipComma() {
        at += text.startsWith(", ", at) ? 2 : 0;
    }

    private String word(String ends) {
        int from = at;
        while (at < text.length() && ends.indexOf(text.charAt(at)) < 0) {
            at++;
        }
        return text.substring(from, at);
    }

    private static Object scalar(String word) {
        if (word.equals("true") || word.equals("false")) {
            return Boolean.valueOf(word);
        }
        return NUMBER.matcher(word).matches() ? (Object) Double.valueOf(word) : word;
    }

    /** A default in words: numbers plain, lists by their entries, blocks by their keys. */
    static String words(Object value) {
        List<String> parts = new ArrayList<>();
        if (value instanceof Number number) {
            return Shown.number(number.doubleValue());
        }
        if (value instanceof List<?> list) {
            list.forEach(entry -> parts.add(words(entry)));
            return parts.isEmpty() ? "none" : String.join("; ", parts);
        }
        if (value instanceof Map<?, ?> map) {
            map.forEach((key, entry) -> parts.add(key + " " + words(entry)));
            return String.join(", ", parts);
        }
        return value.toString();
    }
}
