package org.warmvat.question.vary;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.warmvat.design.Design;
import org.warmvat.design.keys.Numbers;
import org.warmvat.design.keys.Refused;

/**
 * All combinations of one to three axes, the last running fastest.
 *
 * @param axes the axes
 */
public record Grid(List<Axis> axes) {

    private static final int MOST_AXES = 3;
    private static final long MOST_POINTS = 1_000_000;
    private static final int MOST_FAULTS = 20;

    /**
     * Checks the axes.
     *
     * @throws IllegalArgumentException when there are none or too many, a key stands twice, or the combinations are too many
     */
    public Grid {
        axes = List.copyOf(axes);
        if (axes.isEmpty() || axes.size() > MOST_AXES) {
            throw new IllegalArgumentException(axes.size() + " axes, expected 1 to " + MOST_AXES);
        }
        if (axes.stream().map(Axis::key).distinct().count() < axes.size()) {
            throw new IllegalArgumentException("a key stands twice, expected one axis for each");
        }
        long points = 1;
        for (Axis axis : axes) {
            points *= axis.values().size();
        }
        if (points > MOST_POINTS) {
            throw new IllegalArgumentException(points + " combinations, expected at most " + MOST_POINTS);
        }
    }

    /** How many combinations. */
    public int size() {
        return axes.stream().mapToInt(axis -> axis.values().size()).reduce(1, (a, b) -> a * b);
    }

    /** The values of a combination, one for each axis. */
    public double[] values(int index) {
        double[] values = new double[axes.size()];
        int rest = index;
        for (int i = axes.size() - 1; i >= 0; i--) {
            List<Double> all = axes.get(i).values();
            values[i] = all.get(rest % all.size());
            rest /= all.size();
        }
        return values;
    }

    /** A combination in words. */
    public String named(int index) {
        return Axis.named(keys(), values(index));
    }

    List<String> keys() {
        return axes.stream().map(Axis::key).toList();
    }

    /**
     * The design of a combination.
     *
     * @throws Refused when it is not allowed
     */
    public Design design(Design base, int index) {
        double[] values = values(index);
        Map<String, Double> numbers = new LinkedHashMap<>();
        for (int i = 0; i < values.length; i++) {
            numbers.put(axes.get(i).key(), values[i]);
        }
        return base.with(numbers);
    }

    /**
     * Tries every value of each axis, the others at their first, and then the corners, so that a key or a value that is not
     * allowed is found before the runs.
     *
     * @throws Refused with what is not allowed, up to twenty faults
     */
    public void check(Design base) {
        Set<Refused.Fault> faults = new LinkedHashSet<>();
        for (int axis = 0; axis < axes.size(); axis++) {
            int stride = stride(axis);
            for (int i = 0; i < axes.get(axis).values().size() && faults.size() < MOST_FAULTS; i++) {
                faults.addAll(faults(base, i * stride));
            }
        }
        for (int corner = 0; corner < 1 << axes.size() && faults.isEmpty(); corner++) {
            faults.addAll(faults(base, corner(corner)));
        }
        if (faults.isEmpty()
                && axes.stream()
                                .map(axis -> Numbers.place(base, axis.key()))
                                .distinct()
                                .count()
                        < axes.size()) {
            faults.add(new Refused.Fault("", "two axes lead to the same number, expected one for each", List.of()));
        }
        if (!faults.isEmpty()) {
            throw new Refused(faults.stream().limit(MOST_FAULTS).toList());
        }
    }

    private int stride(int axis) {
        return axes.stream()
                .skip(axis + 1L)
                .mapToInt(other -> other.values().size())
                .reduce(1, (a, b) -> a * b);
    }

    private int corner(int corner) {
        int index = 0;
        for (int i = 0; i < axes.size(); i++) {
            int count = axes.get(i).values().size();
            index = index * count + ((corner >> i & 1) == 1 ? count - 1 : 0);
        }
        return index;
    }

    private List<Refused.Fault> faults(Design base, int index) {
        try {
            design(base, index);
            return List.of();
        } catch (Refused.NoNumber noKey) {
            return noKey.faults();
        } catch (Refused refused) {
            return refused.faults().stream()
                    .map(fault -> new Refused.Fault("", "with " + named(index) + ": " + fault, List.of()))
                    .toList();
        }
    }
}
