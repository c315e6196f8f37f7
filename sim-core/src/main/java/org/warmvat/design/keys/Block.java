package org.warmvat.design.keys;

import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;

/** A kind of record as a block of keys. */
public final class Block {

    private static final ClassValue<Block> KNOWN = new ClassValue<>() {
        @Override
        protected Block computeValue(Class<?> type) {
            return new Block(type);
        }
    };

    /** Stands for a value that is not there. */
    static final Object ABSENT = Optional.empty();

    private static final String NAMELESS = "own ";

    private final Class<?> type;
    private final List<Slot> slots;
    private final Constructor<?> constructor;

    private Block(Class<?> type) {
        this.type = type;
        RecordComponent[] components = type.getRecordComponents();
        Arrays.stream(components).forEach(component -> component.getAccessor().setAccessible(true));
        this.slots = Arrays.stream(components).map(Slot::of).toList();
        try {
            Class<?>[] types =
                    Arrays.stream(components).map(RecordComponent::getType).toArray(Class<?>[]::new);
            this.constructor = type.getDeclaredConstructor(types);
            constructor.setAccessible(true);
        } catch (NoSuchMethodException impossible) {
            throw new IllegalStateException(impossible);
        }
    }

    /** The block of a kind of record. */
    public static Block of(Class<?> type) {
        return KNOWN.get(type);
    }

    /** The kind of record. */
    public Class<?> type() {
        return type;
    }

    /** Its components in their order. */
    public List<Slot> slots() {
        return slots;
    }

    /** The words that choose this record among its like: its own, or those of its first component. */
    public List<String> words() {
        Word own = type.getAnnotation(Word.class);
        if (own != null) {
            return List.of(own.value());
        }
        boolean wordFirst = !slots.isEmpty()
                && slots.get(0).key().isEmpty()
                && slots.get(0).type().isEnum();
        return wordFirst
                ? Arrays.stream(slots.get(0).type().getEnumConstants())
                        .map(Slot::word)
                        .toList()
                : List.of();
    }

    /** Names of all keys of this block: its own and those of components whose keys stand in it. */
    public Set<String> names() {
        Set<String> names = new TreeSet<>();
        for (Slot slot : slots) {
            slot.key().ifPresent(key -> {
                names.add(key.name());
                names.add(key.also());
            });
            if (standsHere(slot)) {
                slot.variants().stream()
                        .filter(variant -> slot.inline()
                                || slot.choice() && !variant.words().isEmpty()
                                || about(slot))
                        .forEach(variant -> names.addAll(variant.names()));
            }
        }
        names.remove("");
        return names;
    }

    private static boolean about(Slot slot) {
        return slot.key().filter(Key::beside).isPresent();
    }

    private static boolean standsHere(Slot slot) {
        return slot.key().isPresent() && (slot.inline() || slot.choice() || about(slot)) && !slot.list() && !slot.map();
    }

    /** Whether a record bears a name under which it is known elsewhere in the file. */
    boolean named(Object record) {
        return !slots.isEmpty()
                && slots.get(0).key().isEmpty()
                && get(record, slots.get(0)) instanceof String name
                && !name.startsWith(NAMELESS);
    }

    /** The name of a record that stands where a name could stand. */
    String nameless() {
        return NAMELESS + type.getSimpleName().toLowerCase(Locale.ROOT);
    }

    /** The value of a component. */
    static Object get(Object record, Slot slot) {
        try {
            return slot.component().getAccessor().invoke(record);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(slot.component() + " cannot be read", e);
        }
    }

    /**
     * Makes the record.
     *
     * @throws Refused when it refuses its values
     */
    Object make(Object... values) {
        try {
            return constructor.newInstance(values);
        } catch (InvocationTargetException e) {
            if (e.getCause() instanceof Refused refused) {
                throw refused;
            }
            throw new IllegalStateException(type.getSimpleName() + " refused its values", e.getCause());
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(type.getSimpleName() + " cannot be made", e);
        }
    }

    /** All values of a record in order. */
    Object[] values(Object record) {
        return slots.stream().map(slot -> get(record, slot)).toArray();
    }

    /**
     * Refuses numbers out of their keys' ranges, blank texts and lists with too few entries.
     *
     * @param values the components in their order
     * @throws Refused with every fault
     */
    public void check(Object... values) {
        List<Refused.Fault> faults = new ArrayList<>();
        for (int i = 0; i < values.length; i++) {
            Slot slot = slots.get(i);
            if (slot.key().isPresent()) {
                fault(slot, values[i]).ifPresent(text -> faults.add(new Refused.Fault(slot.name(), text, List.of())));
            } else if (values[i] instanceof String name && name.isBlank()) {
                faults.add(new Refused.Fault("", "the name is blank", List.of()));
            }
        }
        if (!faults.isEmpty()) {
            throw new Refused(faults);
        }
    }

    private static Optional<String> fault(Slot slot, Object value) {
        Object inside = inside(value);
        if (inside instanceof List<?> entries) {
            return entries.size() < slot.key().orElseThrow().entries()
                    ? Optional.of("has no entry, expected at least one")
                    : entries.stream()
                            .flatMap(entry -> fault(slot, entry).stream())
                            .findFirst();
        }
        if (inside instanceof String text && text.isBlank()) {
            return Optional.of(Shown.quoted(text) + ", expected text that is not blank");
        }
        boolean number = inside instanceof Number && (slot.real() || slot.whole());
        return number && !within(slot, ((Number) inside).doubleValue())
                ? Optional.of(
                        Shown.number(slot.written(((Number) inside).doubleValue())) + ", expected " + slot.expected())
                : Optional.empty();
    }

    static Object inside(Object value) {
        if (value instanceof Optional<?> optional) {
            return optional.isPresent() ? optional.get() : ABSENT;
        }
        if (value instanceof OptionalDouble number) {
            return number.isPresent() ? (Object) number.getAsDouble() : ABSENT;
        }
        return value;
    }

    private static boolean within(Slot slot, double held) {
        Key about = slot.key().orElseThrow();
        return held >= slot.held(about.least()) && held <= slot.held(about.most());
    }
}
