package org.warmvat.design.keys;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** All values of a record as a file would write them, numbers, words and texts alike, by the paths of their keys. */
public final class Values {

    private static final List<String> NAMING = List.of("name", "material");

    private Values() {}

    /**
     * The values in the order of the keys; what is absent has none. Entries of a list stand under their names where each has one of
     * its own, else under their places.
     *
     * @param record any record with keys
     */
    public static Map<String, String> all(Record record) {
        Map<String, String> all = new LinkedHashMap<>();
        collect("", record, all);
        return all;
    }

    private static void collect(String path, Record record, Map<String, String> all) {
        for (Slot slot : Block.of(record.getClass()).slots()) {
            if (slot.key().isPresent()) {
                collect(slot, slot.inline() ? path : KeyPath.key(path, slot.name()), path, record, all);
            }
        }
    }

    private static void collect(Slot slot, String at, String around, Record record, Map<String, String> all) {
        Object inside = Block.inside(Block.get(record, slot));
        if (!slot.inline() && inside instanceof Record chosen && slot.stands(inside)) {
            all.put(at, word(chosen));
            collect(around, chosen, all);
        } else {
            value(slot, at, inside, all);
        }
    }

    private static void value(Slot slot, String path, Object value, Map<String, String> all) {
        if (value instanceof List<?> list) {
            Map<String, Integer> names = names(list);
            for (int i = 0; i < list.size(); i++) {
                String name = naming(list.get(i)).orElse("");
                boolean own = names.getOrDefault(name, 0) == 1;
                value(slot, own ? path + "[" + name + "]" : KeyPath.entry(path, i), list.get(i), all);
            }
        } else if (value instanceof Map<?, ?> map) {
            map.forEach((name, entry) -> value(slot, KeyPath.key(path, (String) name), entry, all));
        } else if (value != Block.ABSENT) {
            single(slot, path, value, all);
        }
    }

    /** One value; a number that the file writes as a text is a time of day. */
    private static void single(Slot slot, String path, Object value, Map<String, String> all) {
        if (value instanceof AboutNumber number && number.plain()) {
            all.put(path, Shown.number(number.middle()));
        } else if (value instanceof Number number && !slot.text()) {
            all.put(path, Shown.number(slot.written(number.doubleValue())));
        } else if (value instanceof Number seconds) {
            long minutes = Math.round(seconds.doubleValue() / 60);
            all.put(path, String.format(Locale.ROOT, "%02d:%02d", minutes / 60, minutes % 60));
        } else if (value instanceof Enum<?> word) {
            all.put(path, Slot.word(word));
        } else if (value instanceof Record record && Block.of(record.getClass()).named(record)) {
            all.put(path, nameOf(record));
        } else if (value instanceof Record record && !slot.text()) {
            collect(path, record, all);
        } else {
            all.put(path, value.toString());
        }
    }

    private static String nameOf(Record record) {
        return (String) Block.get(record, Block.of(record.getClass()).slots().get(0));
    }

    /** The word that chooses a record among its like. */
    private static String word(Record chosen) {
        Block block = Block.of(chosen.getClass());
        Object first = block.slots().isEmpty()
                ? Block.ABSENT
                : Block.get(chosen, block.slots().get(0));
        return first instanceof Enum<?> own && block.words().contains(Slot.word(own))
                ? Slot.word(own)
                : block.words().get(0);
    }

    private static Map<String, Integer> names(List<?> list) {
        Map<String, Integer> names = new TreeMap<>();
        list.forEach(entry -> naming(entry).ifPresent(name -> names.merge(name, 1, Integer::sum)));
        return names;
    }

    private static Optional<String> naming(Object entry) {
        if (!(entry instanceof Record record)) {
            return Optional.empty();
        }
        return Block.of(record.getClass()).slots().stream()
                .filter(slot -> NAMING.contains(slot.name()))
                .map(slot -> Block.inside(Block.get(record, slot)))
                .filter(value -> value != Block.ABSENT)
                .map(value -> value instanceof Record named ? nameOf(named) : value.toString())
                .findFirst();
    }
}
