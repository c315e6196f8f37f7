package org.warmvat.design.keys;

import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
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
    private final Optional<Method> usual;
    private final List<String> words;
    private volatile Set<String> names;

    private Block(Class<?> type) {
        this.type = type;
        this.usual = usualOf(type);
        RecordComponent[] components = type.getRecordComponents();
        Arrays.stream(components).forEach(component -> component.getAccessor().setAccessible(true));
        this.slots = Arrays.stream(components).map(Slot::of).toList();
        this.words = wordsOf(type, slots);
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

    /** Defaults that follow from keys that are given, for a record that declares {@code usualOf(Map)}. */
    @SuppressWarnings("unchecked") // as declared
    Map<String, Object> usualOf(Map<String, ?> keys, Findings findings, String path) {
        if (usual.isEmpty() || keys.keySet().stream().anyMatch(key -> findings.faulty(KeyPath.key(path, key)))) {
            return Map.of();
        }
        try {
            return (Map<String, Object>) usual.get().invoke(null, keys);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(type + " has no defaults", e);
        }
    }

    private static Optional<Method> usualOf(Class<?> type) {
        return Arrays.stream(type.getDeclaredMethods())
                .filter(method -> method.getName().equals("usualOf"))
                .peek(method -> method.setAccessible(true))
                .findFirst();
    }

    /** The words that choose this record among its like: its own, or those of its first component. */
    public List<String> words() {
        return words;
    }

    private static List<String> wordsOf(Class<?> type, List<Slot> slots) {
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
        if (names == null) {
            names = Collections.unmodifiableSet(namesOfSlots());
        }
        return names;
    }

    private Set<String> namesOfSlots() {
        Set<String> all = new TreeSet<>();
        for (Slot slot : slots) {
            slot.key().ifPresent(key -> {
                all.add(key.name());
                all.add(key.also());
            });
            if (standsHere(slot)) {
                slot.variants().stream()
                        .filter(variant ->
                                slot.inline() || about(slot) || !variant.words().isEmpty())
                        .forEach(variant -> all.addAll(variant.names()));
            }
        }
        all.remove("");
        return all;
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
                check(slot, slot.name(), inside(values[i]), faults);
            } else if (values[i] instanceof String name && name.isBlank()) {
                faults.add(new Refused.Fault("", "the name is blank", List.of()));
            }
        }
        if (!faults.isEmpty()) {
            throw new Refused(faults);
        }
    }

    private static void check(Slot slot, String path, Object value, List<Refused.Fault> faults) {
        if (value instanceof Map<?, ?> map) {
            map.forEach((name, entry) -> check(slot, KeyPath.key(path, (String) name), entry, faults));
        } else if (value instanceof List<?> list) {
            for (int i = 0; i < list.size(); i++) {
                check(slot, KeyPath.entry(path, i), list.get(i), faults);
            }
            if (list.size() < slot.key().orElseThrow().entries()) {
                faults.add(new Refused.Fault(path, "has no entry, expected at least one", List.of()));
            }
        } else {
            fault(slot, value).ifPresent(text -> faults.add(new Refused.Fault(path, text, List.of())));
        }
    }

    private static Optional<String> fault(Slot slot, Object value) {
        if (value instanceof String text && text.isBlank()) {
            return Optional.of(Shown.quoted(text) + ", expected text that is not blank");
        }
        if (!(value instanceof Number held) || slot.text()) {
            return Optional.empty();
        }
        Key about = slot.key().orElseThrow();
        Bounds bounds = slot.bounds();
        double number = held.doubleValue();
        boolean within = number >= slot.held(bounds.least()) && number <= slot.held(bounds.most());
        return within || number == about.means()
                ? Optional.empty()
                : Optional.of(Shown.number(slot.written(number)) + ", expected " + slot.expected());
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
}
