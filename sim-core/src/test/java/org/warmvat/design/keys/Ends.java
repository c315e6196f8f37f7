package org.warmvat.design.keys;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Least and most of a number, in the file's unit.
 *
 * @param least smallest allowed
 * @param most largest allowed
 */
public record Ends(double least, double most) {

    /** The ends of all numbers of a record by their paths, as {@link Numbers#all} names them. */
    public static Map<String, Ends> of(Record record) {
        Map<String, Ends> all = new LinkedHashMap<>();
        collect("", record, all);
        return all;
    }

    private static void collect(String path, Object record, Map<String, Ends> all) {
        for (Slot slot : Block.of(record.getClass()).slots()) {
            if (slot.key().isPresent()) {
                Object inside = Block.inside(Block.get(record, slot));
                collect(slot, slot.stands(inside) ? path : KeyPath.key(path, slot.name()), inside, all);
            }
        }
    }

    private static void collect(Slot slot, String path, Object value, Map<String, Ends> all) {
        if (value instanceof Number && !slot.text()) {
            all.put(path, new Ends(slot.bounds().least(), slot.bounds().most()));
        } else if (value instanceof List<?> list) {
            for (int i = 0; i < list.size(); i++) {
                collect(slot, KeyPath.entry(path, i), list.get(i), all);
            }
        } else if (value instanceof Record inner
                && !slot.text()
                && !Block.of(inner.getClass()).named(inner)) {
            collect(path, inner, all);
        }
    }
}
