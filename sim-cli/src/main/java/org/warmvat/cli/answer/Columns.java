package org.warmvat.cli.answer;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleFunction;
import java.util.function.Function;

/**
 * The columns of a table about things of one kind, each declared once: its key for other programs, its head and cells for people.
 *
 * @param <T> the things, one to a row
 */
public final class Columns<T> {

    private final Map<String, Function<T, ?>> values = new LinkedHashMap<>();
    private final List<String> heads = new ArrayList<>();
    private final List<Function<T, String>> cells = new ArrayList<>();

    /** A number that may be absent; people see it in words, or a dash. */
    public Columns<T> number(String key, String head, Function<T, ?> value, DoubleFunction<String> words) {
        return value(key, value)
                .cell(
                        head,
                        thing -> Draft.bare(value.apply(thing)) instanceof Number number
                                ? words.apply(number.doubleValue())
                                : "–");
    }

    /** A text for both. */
    public Columns<T> text(String key, String head, Function<T, String> text) {
        return value(key, text).cell(head, text);
    }

    /** A column for other programs alone. */
    public Columns<T> value(String key, Function<T, ?> value) {
        values.put(key, value);
        return this;
    }

    /** A column for people alone. */
    public Columns<T> cell(String head, Function<T, String> cell) {
        heads.add(head);
        cells.add(cell);
        return this;
    }

    /** The table with a name before each row. */
    public Table named(String head, String caption, Map<String, T> things) {
        List<String> header = new ArrayList<>(List.of(head));
        header.addAll(heads);
        List<List<String>> rows = new ArrayList<>();
        things.forEach((name, thing) -> {
            List<String> row = new ArrayList<>(List.of(name));
            cells.forEach(cell -> row.add(cell.apply(thing)));
            rows.add(row);
        });
        return new Table(caption, header, rows);
    }

    /** The table. */
    public Table table(String caption, List<T> things) {
        List<List<String>> rows = new ArrayList<>();
        things.forEach(
                thing -> rows.add(cells.stream().map(cell -> cell.apply(thing)).toList()));
        return new Table(caption, List.copyOf(heads), rows);
    }

    /** The figures of one. */
    public Map<String, Object> row(T thing) {
        Map<String, Object> row = new LinkedHashMap<>();
        values.forEach((key, value) -> row.put(key, Draft.bare(value.apply(thing))));
        return row;
    }

    /** The figures of all. */
    public List<Map<String, Object>> rows(List<T> things) {
        return things.stream().map(this::row).toList();
    }

    /** The same as a file. */
    public Csv csv(List<T> things) {
        return Csv.ofRows(rows(things));
    }
}
