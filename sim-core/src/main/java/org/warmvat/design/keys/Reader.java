package org.warmvat.design.keys;

import java.time.MonthDay;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeSet;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Makes records from trees of maps, lists, numbers and texts with the names of {@link Key}s; absent keys take their defaults.
 *
 * <p>A library would bind records too, but its start costs half a second of processor time with every command (measured), and it knows
 * neither blocks that choose among records by the keys present nor defaults that differ from place to place.
 */
public final class Reader {

    /** Knows values by a name of the file, such as materials. */
    public interface Names {

        /**
         * The value of a name, with a fault added and any value where there is none.
         *
         * @param path path of the key that holds the name
         */
        Object value(String path, String name, Findings findings);
    }

    private final Findings findings;
    private final Names names;
    private boolean quiet;

    /**
     * Starts a reader.
     *
     * @param findings takes what is wrong, absent or idle
     * @param names knows values by name
     */
    public Reader(Findings findings, Names names) {
        this.findings = findings;
        this.names = names;
    }

    /**
     * The record of a block of keys.
     *
     * @param type kind of record
     * @param keys keys as written
     * @param usual defaults that win over those of the keys
     * @param path path of the block; empty for a whole file
     * @param name the record's own name, where it has one beside its keys
     */
    public <T> T read(Class<T> type, Map<String, ?> keys, Map<String, ?> usual, String path, String name) {
        return type.cast(record(Block.of(type), new Given(keys, usual, path, name)));
    }

    /** The record of a block of which nothing is given: everything at its default. */
    public static <T> T usual(Class<T> type) {
        return new Reader(Findings.strict(), (path, name, findings) -> name).read(type, Map.of(), Map.of(), "", "");
    }

    /** The value of a default as a key states it. */
    public static Object value(String usual) {
        return Flow.parse(usual);
    }

    /** The tree of a block written in one line, such as {@code {tank: {liquid_depth_m: 1.2}}}. */
    public static Map<String, ?> tree(String line) {
        return Flow.block(line);
    }

    /** What stands in a block, and where it is. */
    private record Given(Map<String, ?> keys, Map<String, ?> usual, String path, String name, String reason) {

        Given(Map<String, ?> keys, Map<String, ?> usual, String path, String name) {
            this(keys, usual, path, name, "");
        }

        Given because(String why) {
            return new Given(keys, usual, path, name, why);
        }

        boolean any(Block block) {
            return block.names().stream().anyMatch(keys::containsKey);
        }

        String at(String key) {
            return KeyPath.key(path, key);
        }
    }

    private Object record(Block block, Given asked) {
        Map<String, Object> usual = new LinkedHashMap<>(block.usualOf(asked.keys(), findings, asked.path()));
        usual.putAll(asked.usual());
        Given given = new Given(asked.keys(), usual, asked.path(), asked.name(), asked.reason());
        Object[] values =
                block.slots().stream().map(slot -> component(slot, given)).toArray();
        try {
            return block.make(values);
        } catch (Refused refused) {
            if (quiet) {
                throw refused;
            }
            refused.in(given.path()).faults().forEach(findings::wrong);
            return quietly(() -> record(block, new Given(Map.of(), given.usual(), given.path(), given.name())));
        }
    }

    private Object component(Slot slot, Given given) {
        if (slot.key().isEmpty()) {
            return given.name().isEmpty()
                    ? Block.of(slot.component().getDeclaringRecord()).nameless()
                    : given.name();
        }
        if (slot.inline()) {
            return slot.optional() ? optionalBlock(slot, given) : inline(slot, given);
        }
        Optional<String> key = given(slot, given);
        boolean before = quiet;
        quiet |= slot.key().get().quiet() && key.isEmpty();
        Object value = key.isPresent()
                ? held(slot, given.keys().get(key.get()), given.at(key.get()), given)
                : absent(slot, given);
        quiet = before;
        return wrapped(slot, value);
    }

    private static Object wrapped(Slot slot, Object value) {
        if (slot.holder() == OptionalDouble.class) {
            return value == null ? OptionalDouble.empty() : OptionalDouble.of((Double) value);
        }
        return slot.holder() == Optional.class ? Optional.ofNullable(value) : value;
    }

    /** The spelling under which a key stands in the block. */
    private Optional<String> given(Slot slot, Given given) {
        Key key = slot.key().orElseThrow();
        boolean also = !key.also().isEmpty() && given.keys().containsKey(key.also());
        if (also && given.keys().containsKey(key.name())) {
            wrong(given.at(key.also()), "has no place here: " + key.name() + " is given: both mean the same");
        }
        String name = also && !given.keys().containsKey(key.name()) ? key.also() : key.name();
        return Optional.of(name).filter(n -> given.keys().containsKey(n) && !findings.faulty(given.at(n)));
    }

    private Object optionalBlock(Slot slot, Given given) {
        if (slot.variants().stream().anyMatch(given::any)) {
            List<String> present = slot.variants().stream()
                    .flatMap(variant -> variant.names().stream())
                    .filter(given.keys()::containsKey)
                    .toList();
            return Optional.of(inline(slot, given.because("needed beside " + String.join(", ", present))));
        }
        Slot first = slot.variants().get(0).slots().get(0);
        tell(given.at(first.name()), slot.key().orElseThrow().otherwise());
        return Optional.empty();
    }

    private Object inline(Slot slot, Given given) {
        Map<String, Object> usual = new LinkedHashMap<>(slot.usualBlock());
        usual.putAll(given.usual());
        Given here = new Given(given.keys(), usual, given.path(), given.name(), given.reason());
        return slot.choice()
                ? present(slot.variants(), here)
                : record(slot.variants().get(0), here);
    }

    /** The record among several whose keys are there; the first where none has any. */
    private Object present(List<Block> variants, Given given) {
        Block chosen = variants.get(0);
        for (Block variant : variants) {
            chosen = own(variant, variants).anyMatch(given.keys()::containsKey) ? variant : chosen;
        }
        List<String> present =
                own(chosen, variants).filter(given.keys()::containsKey).toList();
        refuseOthers(variants, chosen, String.join(", ", present), given);
        return record(chosen, given.because(reason(variants, chosen, present)));
    }

    /** Keys that a record does not share with all its like. */
    private static Stream<String> own(Block variant, List<Block> variants) {
        return variant.names().stream()
                .filter(name -> variants.size() == 1
                        || !variants.stream().allMatch(other -> other.names().contains(name)));
    }

    /** Why a key of a record is needed that stands in its block together with others. */
    private static String reason(List<Block> variants, Block chosen, List<String> present) {
        if (variants.size() == 1) {
            return "";
        }
        String others = variants.stream()
                .filter(variant -> variant != chosen)
                .flatMap(variant -> own(variant, variants))
                .collect(Collectors.joining(", "));
        return present.isEmpty() ? "or instead " + others : "needed beside " + String.join(", ", present);
    }

    private void refuseOthers(List<Block> variants, Block chosen, String present, Given given) {
        for (String key : strangers(variants, chosen, given)) {
            wrong(given.at(key), "has no place here: " + present + " is given: give the one or the other");
        }
    }

    private static List<String> strangers(List<Block> variants, Block chosen, Given given) {
        TreeSet<String> strangers = new TreeSet<>();
        variants.forEach(variant -> strangers.addAll(variant.names()));
        strangers.removeAll(chosen.names());
        return strangers.stream().filter(given.keys()::containsKey).toList();
    }

    private Object absent(Slot slot, Given given) {
        Key key = slot.key().orElseThrow();
        String path = given.at(key.name());
        Object usual = given.usual().get(key.name());
        Object stated = usual != null ? usual : slot.usual().orElse(null);
        if (key.beside() && given.any(slot.variants().get(0))) {
            String why = "or " + key.name() + " instead";
            return record(slot.variants().get(0), new Given(given.keys(), Map.of(), given.path(), "", why));
        }
        if (stated == null) {
            if (!slot.optional()) {
                if (!quiet) {
                    findings.missing(path, given.reason());
                }
                return quietly(() -> placeholder(slot, given));
            }
            tell(path, key.otherwise());
            return null;
        }
        boolean block = stated instanceof Map && !slot.choice() && !slot.aboutNumber();
        if (!block) {
            tell(path, Flow.words(stated) + (slot.unit().isEmpty() ? "" : " " + slot.unit()));
        }
        return held(slot, block ? Map.of() : stated, path, given);
    }

    private void tell(String path, String words) {
        if (!quiet && !words.isEmpty()) {
            findings.assumed(path, words);
        }
    }

    private void wrong(String path, String text) {
        if (quiet) {
            return;
        }
        findings.wrong(new Refused.Fault(path, text, List.of()));
    }

    /** A value of a tree as the component holds it. */
    private Object held(Slot slot, Object value, String path, Given given) {
        Key key = slot.key().orElseThrow();
        if (!key.word().isEmpty() && key.word().equals(value)) {
            return Double.isNaN(key.means()) ? null : (Object) key.means();
        }
        if (slot.map()) {
            Map<String, Object> map = new LinkedHashMap<>();
            ((Map<?, ?>) value).forEach((name, entry) -> {
                if (!findings.faulty(KeyPath.key(path, (String) name))) {
                    map.put((String) name, one(slot, entry, KeyPath.key(path, (String) name), (String) name, Map.of()));
                }
            });
            return map;
        }
        if (slot.list()) {
            return entries(slot, (List<?>) value, path);
        }
        if (!slot.words().isEmpty() && slot.choice() && !(value instanceof Map)) {
            return chosen(slot, value.toString(), given);
        }
        if (key.beside()) {
            List<String> there = slot.variants().get(0).names().stream()
                    .filter(given.keys()::containsKey)
                    .toList();
            there.forEach(k -> wrong(given.at(k), "has no place here: " + key.name() + " is given"));
        }
        return one(slot, value, path, "", slot.usualBlock());
    }

    private List<Object> entries(Slot slot, List<?> values, String path) {
        List<Object> entries = new ArrayList<>();
        for (int i = 0; i < values.size(); i++) {
            String at = KeyPath.entry(path, i);
            if (!findings.faulty(at)) {
                entries.add(one(slot, values.get(i), at, "", Map.of()));
            }
        }
        if (entries.size() < slot.key().orElseThrow().entries()) {
            entries.add(quietly(() -> one(slot, Made.placeholder(slot), path, "", Map.of())));
        }
        return entries;
    }

    private Object chosen(Slot slot, String word, Given given) {
        List<Block> variants = slot.variants();
        Block chosen = variants.stream()
                .filter(variant -> variant.words().contains(word))
                .findFirst()
                .orElse(variants.get(0));
        Key key = slot.key().orElseThrow();
        List<String> strangers = strangers(variants, chosen, given);
        if (key.idle() && !strangers.isEmpty()) {
            findings.idle(
                    given.path(), String.join(", ", strangers) + ": without effect beside " + key.name() + ": " + word);
        } else {
            strangers.forEach(stranger -> wrong(
                    given.at(stranger),
                    "has no place here: it goes with " + key.name() + ": " + words(variants, stranger)));
        }
        Map<String, Object> usual = new LinkedHashMap<>(given.usual());
        boolean wordFirst =
                !chosen.slots().isEmpty() && chosen.slots().get(0).key().isEmpty();
        if (!wordFirst) {
            String why = "needed for " + key.name() + ": " + word;
            return record(chosen, new Given(given.keys(), usual, given.path(), "", why));
        }
        Object[] values = chosen.slots().stream()
                .map(s -> s.key().isEmpty() ? Made.constant(s.type(), word) : component(s, given))
                .toArray();
        return chosen.make(values);
    }

    private static String words(List<Block> variants, String key) {
        return variants.stream()
                .filter(variant -> variant.names().contains(key))
                .flatMap(variant -> variant.words().stream())
                .collect(Collectors.joining(" or "));
    }

    private Object one(Slot slot, Object value, String path, String name, Map<String, ?> usual) {
        Class<?> type = slot.type();
        if (slot.real()) {
            return slot.held(((Number) value).doubleValue());
        }
        if (slot.whole()) {
            return ((Number) value).intValue();
        }
        if (type == String.class || (slot.truth() && !slot.text())) {
            return value;
        }
        if (type.isEnum()) {
            return Made.constant(type, (String) value);
        }
        if (value instanceof Number number && slot.aboutNumber()) {
            return Made.by(type, "ofNumber", double.class, number.doubleValue());
        }
        if (slot.text()) {
            try {
                return Made.ofText(type, value);
            } catch (Refused refused) {
                refused.in(path).faults().forEach(findings::wrong);
                return type == MonthDay.class
                        ? Made.ofText(type, Made.ANY_DAY)
                        : Made.ofText(type, slot.usual().orElseThrow());
            }
        }
        if (value instanceof Map<?, ?> block) {
            return present(blocks(slot), new Given(texts(block), usual, path, name));
        }
        return names.value(path, (String) value, findings);
    }

    /** Of a choice the records that stand as blocks, else the record itself. */
    private static List<Block> blocks(Slot slot) {
        return slot.variants().stream()
                .filter(variant -> !slot.choice() || variant.words().isEmpty())
                .toList();
    }

    /** A block of keys as such. */
    @SuppressWarnings("unchecked") // keys of a file are texts
    public static Map<String, ?> texts(Map<?, ?> block) {
        return (Map<String, ?>) block;
    }

    /** Any value that the record takes, for the rest to be judged where a key is missing or wrong. */
    private Object placeholder(Slot slot, Given given) {
        if (slot.list()) {
            return List.of(one(slot, Made.placeholder(slot), given.path(), "", Map.of()));
        }
        return one(slot, Made.placeholder(slot), given.path(), "", Map.of());
    }

    private <T> T quietly(Supplier<T> reading) {
        boolean before = quiet;
        quiet = true;
        try {
            return reading.get();
        } finally {
            quiet = before;
        }
    }
}
