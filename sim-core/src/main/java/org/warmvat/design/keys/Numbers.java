package org.warmvat.design.keys;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Single numbers of a record by the paths of their keys, and the same record with some of them exchanged. */
public final class Numbers {

    private Numbers() {}

    /**
     * Numbers to exchange below a record.
     *
     * @param path path of the record, for messages
     * @param numbers each number with the steps that lead to it from the record
     */
    private record Change(String path, Map<List<String>, Double> numbers) {

        /** What of it leads through a step. */
        Change below(String step, String at) {
            Map<List<String>, Double> below = new LinkedHashMap<>();
            numbers.forEach((steps, number) -> {
                if (steps.get(0).equals(step)) {
                    below.put(steps.subList(1, steps.size()), number);
                }
            });
            return new Change(at, below);
        }

        /** What of it names a key of a block. */
        Change within(Collection<String> names) {
            Map<List<String>, Double> within = new LinkedHashMap<>(numbers);
            within.keySet().removeIf(steps -> !names.contains(steps.get(0)));
            return new Change(path, within);
        }

        boolean isEmpty() {
            return numbers.isEmpty();
        }

        /** The path of a number that is led to by steps. */
        String at(List<String> steps) {
            String below = String.join(".", steps).replace(".[", "[");
            return below.isEmpty() ? path : below.startsWith("[") ? path + below : KeyPath.key(path, below);
        }

        Optional<Double> whole() {
            return Optional.ofNullable(numbers.get(List.of()));
        }

        Refused refused(String fact) {
            return new Refused.NoNumber(path, fact);
        }
    }

    /**
     * The same record with some numbers exchanged at once, so that only the whole must be allowed.
     *
     * @param record any record with keys
     * @param numbers numbers, in the file's units, by the paths of their keys
     * @throws Refused when there is no such number or the record is refused with them
     */
    public static <T extends Record> T with(T record, Map<String, Double> numbers) {
        Map<List<String>, Double> bySteps = new LinkedHashMap<>();
        numbers.forEach((path, number) -> {
            if (!Double.isFinite(number)) {
                throw new Refused.NoNumber(path, number + ", expected a finite number");
            }
            bySteps.put(steps(path, record), number);
        });
        @SuppressWarnings("unchecked") // the same kind of record comes back
        T changed = (T) record(record, new Change("", bySteps));
        return changed;
    }

    private static List<String> steps(String path, Object record) {
        try {
            List<String> steps = KeyPath.steps(path);
            Paths.last(Block.of(record.getClass()), path, steps);
            return Paths.bracketed(Block.of(record.getClass()), steps);
        } catch (Refused refused) {
            throw refused;
        } catch (IllegalArgumentException noPath) {
            throw new Refused.NoNumber("", noPath.getMessage());
        }
    }

    private static Object record(Object record, Change change) {
        Block block = Block.of(record.getClass());
        Object[] values = block.values(record);
        for (int i = 0; i < values.length; i++) {
            Slot slot = block.slots().get(i);
            if (slot.key().isEmpty()) {
                continue;
            }
            values[i] = slot.inline() ? inline(slot, values[i], change) : named(slot, values[i], change);
        }
        try {
            return block.make(values);
        } catch (Refused refused) {
            throw refused.in(change.path());
        }
    }

    private static Object inline(Slot slot, Object value, Change change) {
        Object inside = Block.inside(value);
        for (Block variant : slot.variants()) {
            Change within = change.within(variant.names());
            if (!within.isEmpty()) {
                refuseOthers(slot, within, change);
                Object changed = variant.type().isInstance(inside) ? record(inside, within) : other(variant, within);
                return slot.optional() ? Optional.of(changed) : changed;
            }
        }
        return value;
    }

    /** Numbers of two choices, of which there can be but one. */
    private static void refuseOthers(Slot slot, Change chosen, Change change) {
        for (Block variant : slot.variants()) {
            for (List<String> steps : change.within(variant.names()).numbers().keySet()) {
                if (!chosen.numbers().containsKey(steps)) {
                    String one = chosen.at(chosen.numbers().keySet().iterator().next());
                    throw new Refused.NoNumber(change.at(steps), "has no place beside " + one + ": they say the same");
                }
            }
        }
    }

    /** Another choice than the one there is, made by the number that names it. */
    private static Object other(Block variant, Change change) {
        Map<String, Double> keys = new LinkedHashMap<>();
        change.numbers().forEach((steps, number) -> {
            if (steps.size() > 1) {
                String block = change.at(steps.subList(0, steps.size() - 1));
                throw new Refused.NoNumber(change.at(steps), "has no place: this design has no " + block);
            }
            keys.put(steps.get(0), number);
        });
        Reader reader = new Reader(Findings.strict(), (path, name, findings) -> name);
        return reader.read(variant.type(), keys, Map.of(), change.path(), "");
    }

    private static Object named(Slot slot, Object value, Change change) {
        Change below = below(slot, change);
        if (!below.isEmpty()) {
            return value(slot, value, below);
        }
        Object inside = Block.inside(value);
        if (inside instanceof Record chosen
                && (slot.stands(inside) || slot.key().orElseThrow().beside())) {
            Change within = change.within(Block.of(chosen.getClass()).names());
            return within.isEmpty() ? value : record(chosen, within);
        }
        return value;
    }

    private static Change below(Slot slot, Change change) {
        Key key = slot.key().orElseThrow();
        Change below = change.below(key.name(), KeyPath.key(change.path(), key.name()));
        return below.isEmpty() && !key.also().isEmpty()
                ? change.below(key.also(), KeyPath.key(change.path(), key.also()))
                : below;
    }

    private static Object value(Slot slot, Object value, Change change) {
        Object inside = Block.inside(value);
        if (slot.number()) {
            return number(slot, change);
        }
        if (inside == Block.ABSENT) {
            throw new Refused.NoNumber(
                    change.at(change.numbers().keySet().iterator().next()),
                    "has no place: this design has no " + change.path());
        }
        Object changed;
        if (slot.aboutNumber() && change.whole().isPresent()) {
            changed = aboutNumber(slot, change);
        } else if (inside instanceof List<?> list) {
            changed = list(slot, list, change);
        } else if (inside instanceof Map<?, ?> map) {
            changed = map(slot, map, change);
        } else if (change.whole().isPresent() || !(inside instanceof Record)) {
            throw change.refused("is no number, expected the path of one");
        } else {
            changed = record(inside, change);
        }
        return slot.optional() ? Optional.of(changed) : changed;
    }

    /** A refusal speaks of the number's own path: whoever gives one number knows of no key below it. */
    private static Object aboutNumber(Slot slot, Change change) {
        try {
            return Made.by(slot.type(), "ofNumber", double.class, change.whole().orElseThrow());
        } catch (Refused refused) {
            throw new Refused(change.path(), refused.faults().get(0).text());
        }
    }

    private static Object number(Slot slot, Change change) {
        Object held = held(slot, change);
        if (slot.holder() == java.util.OptionalDouble.class) {
            return java.util.OptionalDouble.of((Double) held);
        }
        return slot.optional() ? Optional.of(held) : held;
    }

    private static Object held(Slot slot, Change change) {
        double number = change.whole().orElseThrow(() -> change.refused("is a number, expected nothing below it"));
        if (slot.whole() && number != Math.rint(number)) {
            throw new Refused(change.path(), Shown.number(number) + ", expected " + slot.expected());
        }
        return slot.whole() ? (Object) (int) number : (Object) slot.held(number);
    }

    private static Object list(Slot slot, List<?> list, Change change) {
        List<Object> changed = new ArrayList<>(list);
        for (List<String> steps : change.numbers().keySet()) {
            String step = steps.isEmpty() ? "" : steps.get(0);
            int index = Paths.entry(list, step)
                    .orElseThrow(() -> new Refused.NoNumber(
                            change.at(steps),
                            step.isEmpty()
                                    ? "is no number, expected the path of one"
                                    : "has no place: this design has no " + change.path() + step));
            Change below = change.below(step, change.path() + step);
            Object entry = list.get(index);
            changed.set(index, entry instanceof Record record ? record(record, below) : held(slot, below));
        }
        return changed;
    }

    private static Object map(Slot slot, Map<?, ?> map, Change change) {
        Map<Object, Object> changed = new LinkedHashMap<>(map);
        for (List<String> steps : change.numbers().keySet()) {
            String name = steps.isEmpty() ? "" : steps.get(0);
            Object entry = map.get(name);
            if (entry == null) {
                throw change.refused("has no place: this design has no " + KeyPath.key(change.path(), name));
            }
            Change below = change.below(name, KeyPath.key(change.path(), name));
            changed.put(name, entry instanceof Record record ? record(record, below) : number(slot, below));
        }
        return changed;
    }

    /**
     * The number at a path, in the file's unit.
     *
     * @throws Refused when the record has none there
     */
    public static double at(Record record, String path) {
        List<String> steps = steps(path, record);
        Map<String, Double> all = all(record);
        String placed = Paths.placed(record, steps);
        Double number = all.getOrDefault(placed, all.get(placed + ".middle"));
        if (number == null) {
            throw new Refused.NoNumber(path, "is no number in this design");
        }
        return number;
    }

    /**
     * What a number of a kind of record may be, by its key's range.
     *
     * @param type the kind of record
     * @param path path of the number
     * @throws Refused when no such key is known, or none that is a number
     */
    public static Bounds bounds(Class<? extends Record> type, String path) {
        try {
            Slot slot = Paths.last(Block.of(type), path, KeyPath.steps(path));
            if (!slot.real() && !slot.whole() && !slot.aboutNumber()) {
                throw new Refused.NoNumber(path, "is no number, expected the path of one");
            }
            return slot.bounds();
        } catch (Refused refused) {
            throw refused;
        } catch (IllegalArgumentException noPath) {
            throw new Refused.NoNumber("", noPath.getMessage());
        }
    }

    /** One and the same text for all paths of a number: entries of lists by their place. */
    public static String place(Record record, String path) {
        return Paths.placed(record, steps(path, record));
    }

    /** All numbers of a record, in the file's units, by their paths in the order of the keys. */
    public static Map<String, Double> all(Record record) {
        Map<String, Double> all = new LinkedHashMap<>();
        collect("", record, all);
        return all;
    }

    private static void collect(String path, Object record, Map<String, Double> all) {
        Block block = Block.of(record.getClass());
        for (Slot slot : block.slots()) {
            Object inside = Block.inside(Block.get(record, slot));
            if (slot.key().isPresent()) {
                collect(slot, slot.stands(inside) ? path : KeyPath.key(path, slot.name()), inside, all);
            }
        }
    }

    private static void collect(Slot slot, String path, Object value, Map<String, Double> all) {
        if (value instanceof Number number && !slot.text()) {
            all.put(path, slot.written(number.doubleValue()));
        } else if (value instanceof List<?> list) {
            for (int i = 0; i < list.size(); i++) {
                collect(slot, KeyPath.entry(path, i), list.get(i), all);
            }
        } else if (value instanceof Map<?, ?> map) {
            map.forEach((name, entry) -> {
                String own = KeyPath.key(path, (String) name);
                if (entry instanceof Record) {
                    collect(own, entry, all);
                } else {
                    collect(slot, own, entry, all);
                }
            });
        } else if (value instanceof AboutNumber number && number.plain()) {
            all.put(path, number.middle());
        } else if (value instanceof Record record
                && !slot.text()
                && !Block.of(record.getClass()).named(record)) {
            collect(path, record, all);
        }
    }
}
