package org.warmvat.design.keys;

import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One component of a record: its key, and of what kind its value is. What follows from its type is worked out once: the platform looks
 * the records of a choice up anew each time it is asked, and a design is read again with every move of a slider.
 */
public final class Slot {

    private static final int RANGE_PARTS = 4;

    private final RecordComponent component;
    private final Optional<Key> key;
    private final Class<?> holder;
    private final Class<?> type;
    private final boolean list;
    private final boolean map;
    private final String name;
    private final boolean choice;
    private final Optional<Object> usual;
    private final Optional<Bounds> bounds;
    private final String unit;
    private final Map<String, Object> usualBlock;
    // these ask other records, which may ask back: worked out when first needed
    private volatile List<Block> variants;
    private volatile List<String> words;

    private Slot(RecordComponent component, Class<?> holder, Class<?> type, boolean list, boolean map) {
        this.component = component;
        this.key = Optional.ofNullable(component.getAnnotation(Key.class));
        this.holder = holder;
        this.type = type;
        this.list = list;
        this.map = map;
        this.name = key.map(Key::name).orElse("");
        this.choice = type.isInterface() && type.isSealed();
        String stated = key.map(Key::usual).orElse("");
        this.usual = stated.isEmpty() ? Optional.empty() : Optional.of(Flow.parse(stated));
        this.usualBlock = Flow.block(stated);
        // least, "to", most, unit
        List<String> range = List.of(key.map(Key::range).orElse("").split(" ", RANGE_PARTS));
        this.bounds = range.size() < RANGE_PARTS - 1
                ? Optional.empty()
                : Optional.of(new Bounds(Double.parseDouble(range.get(0)), Double.parseDouble(range.get(2)), whole()));
        this.unit = range.size() < RANGE_PARTS ? "" : range.get(RANGE_PARTS - 1);
    }

    static Slot of(RecordComponent component) {
        Type held = component.getGenericType();
        Class<?> holder = component.getType();
        Class<?> plural = holder;
        if (holder == Optional.class) {
            held = ((ParameterizedType) held).getActualTypeArguments()[0];
            plural = held instanceof ParameterizedType several ? (Class<?>) several.getRawType() : holder;
        }
        if (held instanceof ParameterizedType several) {
            Type[] inner = several.getActualTypeArguments();
            held = inner[inner.length - 1];
        }
        Class<?> type = holder == OptionalDouble.class ? Double.class : (Class<?>) held;
        return new Slot(component, holder, type, plural == List.class, plural == Map.class);
    }

    /** The component. */
    public RecordComponent component() {
        return component;
    }

    /** What is said about it; empty for a record's own name, which is no key of its block. */
    public Optional<Key> key() {
        return key;
    }

    /** How the value is held: {@link Optional}, {@link List}, {@link Map}, or the value's own type. */
    public Class<?> holder() {
        return holder;
    }

    /** Type of the value, of an entry of a list or of a map. */
    public Class<?> type() {
        return type;
    }

    /** Whether it holds a list of values. */
    public boolean list() {
        return list;
    }

    /** Whether it holds values by name. */
    public boolean map() {
        return map;
    }

    /** Its default as its key states it. */
    Optional<Object> usual() {
        return usual;
    }

    /** The same of a block; empty where the default is none. */
    Map<String, Object> usualBlock() {
        return usualBlock;
    }

    /** Its key's name; empty for a component whose keys stand in the same block, and for a record's own name. */
    public String name() {
        return name;
    }

    /** Whether its value's keys stand in the same block. */
    public boolean inline() {
        return key.isPresent() && name.isEmpty();
    }

    boolean called(String name) {
        return !name.isEmpty()
                && key.filter(k -> k.name().equals(name) || k.also().equals(name))
                        .isPresent();
    }

    /** Whether one number may stand for its record. */
    public boolean aboutNumber() {
        return AboutNumber.class.isAssignableFrom(type);
    }

    /** Whether it may be absent. */
    public boolean optional() {
        return holder == Optional.class || holder == OptionalDouble.class;
    }

    /** Whether its value is a number. */
    public boolean number() {
        return !list() && !map() && (real() || whole());
    }

    /** Whether its value, or its entry's, is a number with decimals. */
    public boolean real() {
        return (type == double.class || type == Double.class)
                && key.orElseThrow().pattern().isEmpty();
    }

    /** Whether its value, or its entry's, is a whole number. */
    public boolean whole() {
        return type == int.class || type == Integer.class;
    }

    /** Whether its value is true or false. */
    public boolean truth() {
        return type == boolean.class || type == Boolean.class;
    }

    /** Whether its value is read from text or from a list of texts by a factory of its own. */
    public boolean text() {
        return type == String.class || !key.orElseThrow().pattern().isEmpty();
    }

    /** The records that may stand here: several where it is a choice, none where it is no record. */
    public List<Block> variants() {
        if (variants == null) {
            variants = variantsOfType();
        }
        return variants;
    }

    private List<Block> variantsOfType() {
        if (choice) {
            return Arrays.stream(type.getPermittedSubclasses()).map(Block::of).toList();
        }
        return type.isRecord() && !text() ? List.of(Block.of(type)) : List.of();
    }

    /** Whether a value's keys stand in the same block: of a record without a name of its own, or of one chosen by a word. */
    boolean stands(Object value) {
        boolean byWord = value instanceof Record record
                && !Block.of(record.getClass()).words().isEmpty();
        return inline() || (choice() && byWord);
    }

    /** Whether the value is one of several records. */
    public boolean choice() {
        return choice;
    }

    /** The words that may stand here; empty where none does. */
    public List<String> words() {
        if (words == null) {
            words = wordsOfType();
        }
        return words;
    }

    private List<String> wordsOfType() {
        if (type.isEnum()) {
            return Arrays.stream(type.getEnumConstants()).map(Slot::word).toList();
        }
        return choice() && !inline()
                ? variants().stream()
                        .flatMap(variant -> variant.words().stream())
                        .toList()
                : List.of();
    }

    static String word(Object constant) {
        return ((Enum<?>) constant).name().toLowerCase(Locale.ROOT);
    }

    /** What a number may be by its key alone, in the file's unit. */
    public Bounds bounds() {
        return bounds.orElseThrow();
    }

    /** Unit of a number as printed in messages; empty for none. */
    public String unit() {
        return unit;
    }

    /** What is allowed for a number, as in {@code a number, 0 to 1000 m2}. */
    String expected() {
        return (whole() ? "a whole number, " : "a number, ") + Shown.number(bounds().least()) + " to "
                + Shown.number(bounds().most()) + (unit.isEmpty() ? "" : " " + unit);
    }

    /** A number of the file as the record holds it. */
    double held(double number) {
        Key about = key.orElseThrow();
        return number * about.times() / about.per();
    }

    /** A number of the record as the file writes it, free of what the conversion leaves in the last digits. */
    double written(double held) {
        Key about = key.orElseThrow();
        if (about.per() == about.times()) {
            return held;
        }
        double number = held * about.per() / about.times();
        double rounded = Double.parseDouble(String.format(Locale.ROOT, "%.12g", number));
        return held(rounded) == held ? rounded : number;
    }
}
