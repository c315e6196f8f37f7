package org.warmvat.weather.service;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The first lines of a text, by which its kind is told.
 *
 * @param lines at most 300, each without the end of its line
 */
record TextHead(List<String> lines) {
    private static final int MOST_LINES = 300;

    static TextHead of(String text) {
        return new TextHead(text.lines().limit(MOST_LINES).toList());
    }

    /** A line counted from 0; nothing after the last. */
    String line(int index) {
        return index < lines.size() ? lines.get(index) : "";
    }

    /** Index of the first line that begins so. */
    Optional<Integer> first(String beginning) {
        for (int i = 0; i < lines.size(); i++) {
            if (lines.get(i).startsWith(beginning)) {
                return Optional.of(i);
            }
        }
        return Optional.empty();
    }

    /** The number that the first group of a pattern finds, in the first line in which it is found. */
    Optional<Double> number(String regex) {
        Pattern pattern = Pattern.compile(regex);
        for (String line : lines) {
            Matcher matcher = pattern.matcher(line);
            if (matcher.find()) {
                return Optional.of(Double.parseDouble(matcher.group(1)));
            }
        }
        return Optional.empty();
    }

    /** The names in a heading line. */
    static List<String> names(String line, char delimiter) {
        return Pattern.compile(String.valueOf(delimiter), Pattern.LITERAL)
                .splitAsStream(line)
                .map(name -> name.strip().replaceAll("^\"|\"$", "").strip())
                .toList();
    }
}
