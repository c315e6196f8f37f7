package org.warmvat.design.keys;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.warmvat.spelling.Nearest;

/** Leads paths of keys through records and through kinds of records. */
final class Paths {

    private Paths() {}

    /** What a step leads to in a kind of record: the slot, wherever in the block it stands. */
    private static Optional<Slot> slot(List<Block> blocks, String step) {
        for (Block block : blocks) {
            for (Slot slot : block.slots()) {
                if (slot.called(step)) {
                    return Optional.of(slot);
                }
                boolean here = slot.key().isPresent()
                        && (slot.inline() || slot.choice() || slot.key().get().beside());
                Optional<Slot> inner = here ? slot(slot.variants(), step) : Optional.empty();
                if (inner.isPresent()) {
                    return inner;
                }
            }
        }
        return Optional.empty();
    }

    /**
     * The slot that a path leads to; of an entry its list's.
     *
     * @throws Refused with the nearest known key where the path names one that there is not
     */
    static Slot last(Block root, String path, List<String> steps) {
        List<Block> blocks = List.of(root);
        Optional<Slot> slot = Optional.empty();
        String parent = "";
        boolean entryNext = false;
        for (String step : steps) {
            if (entryNext) {
                parent += step.startsWith("[") ? step : "." + step;
                entryNext = false;
                continue;
            }
            slot = slot(blocks, step);
            if (slot.isEmpty()) {
                throw new Refused.NoNumber(path, "is not a known key, " + hint(blocks, step, parent));
            }
            blocks = slot.get().variants();
            entryNext = slot.get().list() || slot.get().map();
            parent = KeyPath.key(parent, step);
        }
        return slot.orElseThrow();
    }

    private static String hint(List<Block> blocks, String step, String parent) {
        List<String> names =
                blocks.stream().flatMap(block -> block.names().stream()).toList();
        return Nearest.of(step, names)
                .map(near -> "did you mean " + KeyPath.key(parent, near) + "?")
                .orElse("known here: " + names.stream().collect(Collectors.joining(", ")));
    }

    /** A list's entry may also be named after a dot: {@code envelope.wall.pir_foam} is {@code envelope.wall[pir_foam]}. */
    static List<String> bracketed(Block root, List<String> steps) {
        List<String> bracketed = new ArrayList<>();
        List<Block> blocks = List.of(root);
        boolean list = false;
        boolean map = false;
        for (String step : steps) {
            if (list || map) {
                bracketed.add(list && !step.startsWith("[") ? "[" + step + "]" : step);
                list = false;
                map = false;
                continue;
            }
            Slot slot = slot(blocks, step).orElseThrow();
            list = slot.list();
            map = slot.map();
            blocks = slot.variants();
            bracketed.add(step);
        }
        return bracketed;
    }

    /** The place of an entry: {@code [1]}, or the first whose material or name is in the brackets. */
    static Optional<Integer> entry(List<?> list, String step) {
        if (!step.startsWith("[")) {
            return Optional.empty();
        }
        String inside = step.substring(1, step.length() - 1);
        if (inside.matches("[0-9]{1,6}")) {
            int index = Integer.parseInt(inside);
            return index < list.size() ? Optional.of(index) : Optional.empty();
        }
        for (int i = 0; i < list.size(); i++) {
            if (list.get(i) instanceof Record record && named(record, inside)) {
                return Optional.of(i);
            }
        }
        return Optional.empty();
    }

    /** Whether a record, or the one it is made of, has a name. */
    private static boolean named(Record record, String name) {
        for (Slot slot : Block.of(record.getClass()).slots()) {
            Object value = Block.inside(Block.get(record, slot));
            boolean own = slot.key().isEmpty() || slot.called("name") || slot.called("material");
            if (own && (name.equals(value) || (value instanceof Record inner && named(inner, name)))) {
                return true;
            }
        }
        return false;
    }

    /** The path with each entry of a list by its place, counted from 0. */
    static String placed(Record record, List<String> steps) {
        String placed = "";
        Object at = record;
        for (String step : steps) {
            if (at instanceof List<?> list) {
                int index = entry(list, step).orElse(-1);
                placed = KeyPath.entry(placed, index);
                at = index < 0 ? "" : list.get(index);
                continue;
            }
            placed = KeyPath.key(placed, step);
            at = at instanceof Record block
                    ? value(block, step)
                    : at instanceof java.util.Map<?, ?> map && map.containsKey(step) ? map.get(step) : "";
        }
        return placed;
    }

    private static Object value(Record record, String step) {
        for (Slot slot : Block.of(record.getClass()).slots()) {
            Object value = Block.inside(Block.get(record, slot));
            if (slot.called(step)) {
                return value;
            }
            boolean here = slot.key().isPresent() && (slot.inline() || slot.choice());
            if (here && value instanceof Record inner) {
                Object found = value(inner, step);
                if (!found.equals("")) {
                    return found;
                }
            }
        }
        return "";
    }
}
