package org.warmvat.design.keys;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;

/** Whole parts of a record exchanged. */
public final class Parts {

    private Parts() {}

    /**
     * The same record with a part exchanged.
     *
     * @param part a record of a kind that stands once in the other, at any depth of blocks without a list
     * @throws IllegalArgumentException when the record has no place for such a part
     */
    public static <T extends Record> T with(T record, Record part) {
        return changed(record, part.getClass(), Optional.of(part));
    }

    /**
     * The same record without a part that may be absent.
     *
     * @throws IllegalArgumentException when the record has no place for such a part
     */
    public static <T extends Record> T without(T record, Class<? extends Record> part) {
        return changed(record, part, Optional.empty());
    }

    /**
     * The same record with another value of a component, for those that hold several parts.
     *
     * @param component name of the component
     * @throws IllegalArgumentException when the record has no such component
     */
    @SuppressWarnings("unchecked") // the same kind of record comes back
    public static <T extends Record> T component(T record, String component, Object value) {
        Block block = Block.of(record.getClass());
        Object[] values = block.values(record);
        for (int i = 0; i < values.length; i++) {
            if (block.slots().get(i).component().getName().equals(component)) {
                values[i] = value;
                return (T) block.make(values);
            }
        }
        throw new IllegalArgumentException(record.getClass().getSimpleName() + " has no " + component);
    }

    @SuppressWarnings("unchecked") // the same kind of record comes back
    private static <T extends Record> T changed(T record, Class<?> kind, Optional<Record> part) {
        return (T) exchanged(record, kind, part)
                .orElseThrow(
                        () -> new IllegalArgumentException(record.getClass().getSimpleName() + " has no "
                                + kind.getSimpleName() + (part.isEmpty() ? " that may be absent" : "")));
    }

    private static Optional<Record> exchanged(Record record, Class<?> kind, Optional<Record> part) {
        Block block = Block.of(record.getClass());
        Object[] values = block.values(record);
        for (int i = 0; i < values.length; i++) {
            Slot slot = block.slots().get(i);
            boolean single = slot.key().isPresent() && !slot.list() && !slot.map();
            if (single && slot.type().isAssignableFrom(kind) && (slot.optional() || part.isPresent())) {
                values[i] = slot.optional() ? part : part.get();
                return Optional.of((Record) block.make(values));
            }
            if (single && Block.inside(values[i]) instanceof Record inner) {
                Optional<Record> changed = exchanged(inner, kind, part);
                if (changed.isPresent()) {
                    values[i] = slot.optional() ? changed : changed.get();
                    return Optional.of((Record) block.make(values));
                }
            }
        }
        return Optional.empty();
    }

    /** The same record with every part of a kind, wherever it stands, put through an operator. */
    @SuppressWarnings("unchecked") // the same kind of record comes back
    public static <T extends Record, P> T each(T record, Class<P> kind, UnaryOperator<P> operator) {
        return (T) put(record, kind, part -> operator.apply(kind.cast(part)));
    }

    private static Object put(Object value, Class<?> kind, UnaryOperator<Object> operator) {
        if (kind.isInstance(value)) {
            return operator.apply(value);
        }
        if (value instanceof Optional<?> optional) {
            return optional.map(inner -> put(inner, kind, operator));
        }
        if (value instanceof List<?> list) {
            List<Object> changed = new ArrayList<>();
            list.forEach(entry -> changed.add(put(entry, kind, operator)));
            return changed;
        }
        if (value instanceof Map<?, ?> map) {
            Map<Object, Object> changed = new LinkedHashMap<>();
            map.forEach((name, entry) -> changed.put(name, put(entry, kind, operator)));
            return changed;
        }
        if (value instanceof Record record) {
            Block block = Block.of(record.getClass());
            Object[] values = block.values(record);
            Arrays.setAll(values, i -> put(values[i], kind, operator));
            return block.make(values);
        }
        return value;
    }
}
