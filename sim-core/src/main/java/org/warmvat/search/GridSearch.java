package org.warmvat.search;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;

/**
 * Finds the best point of a grid, each axis of which is a choice among some options in order.
 *
 * <p>All points are tried where the grid is small; else coordinate descent from several starts (each axis searched along its whole
 * length in turn), ended by a look at every neighbour one step away in one or two axes. On an <em>easing</em> axis a later option
 * never makes a barring limit worse: a point whose next easier neighbour is barred is barred too and need not be judged. Points are
 * judged in batches, and nothing depends on the order in which a batch is done.
 */
public final class GridSearch {

    private final int[] sizes;
    private final boolean[] easing;
    private final Function<List<List<Integer>>, List<Judgement>> judge;
    private final Map<List<Integer>, Judgement> known = new HashMap<>();
    private final Set<List<Integer>> skipped = new LinkedHashSet<>();

    /**
     * A search that has tried nothing yet.
     *
     * @param sizes options of each axis, at least 1 each
     * @param easing whether a later option never makes a barring limit worse; all false to skip nothing
     * @param judge judges points, in their order
     * @throws IllegalArgumentException when an axis has no option or the lengths differ
     */
    public GridSearch(int[] sizes, boolean[] easing, Function<List<List<Integer>>, List<Judgement>> judge) {
        if (sizes.length == 0 || sizes.length != easing.length) {
            throw new IllegalArgumentException(
                    "axes " + sizes.length + " and " + easing.length + ", expected as many of both");
        }
        for (int size : sizes) {
            if (size < 1) {
                throw new IllegalArgumentException("an axis of " + size + " options, expected at least 1");
            }
        }
        this.sizes = sizes.clone();
        this.easing = easing.clone();
        this.judge = judge;
    }

    /** Tries every point, easiest first, so that what is barred need not be tried. */
    public void exhaust() {
        TreeMap<Integer, List<List<Integer>>> waves = new TreeMap<>();
        every().forEach(point -> waves.computeIfAbsent(hardness(point), hard -> new ArrayList<>())
                .add(point));
        waves.values().forEach(this::judgeNew);
    }

    /** Every point of the grid, the last axis running fastest. */
    public List<List<Integer>> every() {
        List<List<Integer>> every = new ArrayList<>();
        List<Integer> point = new ArrayList<>(Collections.nCopies(sizes.length, 0));
        do {
            every.add(List.copyOf(point));
        } while (advance(point));
        return every;
    }

    /** Steps away from the easiest options. */
    private int hardness(List<Integer> point) {
        int steps = 0;
        for (int axis = 0; axis < sizes.length; axis++) {
            steps += easing[axis] ? sizes[axis] - 1 - point.get(axis) : 0;
        }
        return steps;
    }

    private boolean advance(List<Integer> point) {
        for (int axis = sizes.length - 1; axis >= 0; axis--) {
            if (point.get(axis) + 1 < sizes[axis]) {
                point.set(axis, point.get(axis) + 1);
                return true;
            }
            point.set(axis, 0);
        }
        return false;
    }

    /**
     * Descends from some points by a weighted sum of the aims.
     *
     * @param starts where to begin
     * @param weights of the aims
     */
    public void descend(List<List<Integer>> starts, double... weights) {
        judgeNew(starts);
        for (List<Integer> start : starts) {
            List<Integer> here = start;
            List<Integer> before;
            do {
                before = here;
                here = alongAxes(here, weights);
                if (here.equals(before)) {
                    here = better(here, near(here), weights);
                }
            } while (!here.equals(before));
        }
    }

    private List<Integer> alongAxes(List<Integer> from, double... weights) {
        List<Integer> here = from;
        for (int axis = 0; axis < sizes.length; axis++) {
            here = better(here, line(here, axis), weights);
        }
        return here;
    }

    private List<Integer> better(List<Integer> here, List<List<Integer>> others, double... weights) {
        judgeNew(others);
        Comparator<List<Integer>> order = order(weights);
        List<Integer> best = here;
        for (List<Integer> other : others) {
            if (known.containsKey(other) && order.compare(other, best) < 0) {
                best = other;
            }
        }
        return best;
    }

    /** The points along an axis through a point, itself among them. */
    public List<List<Integer>> line(List<Integer> through, int axis) {
        List<List<Integer>> line = new ArrayList<>();
        for (int option = 0; option < sizes[axis]; option++) {
            line.add(with(through, axis, option));
        }
        return line;
    }

    /** Neighbours one step away in one axis. */
    public List<List<Integer>> neighbours(List<Integer> point) {
        List<List<Integer>> all = new ArrayList<>();
        for (int axis = 0; axis < sizes.length; axis++) {
            for (int step = -1; step <= 1; step += 2) {
                int option = point.get(axis) + step;
                if (option >= 0 && option < sizes[axis]) {
                    all.add(with(point, axis, option));
                }
            }
        }
        return all;
    }

    private List<List<Integer>> near(List<Integer> point) {
        Set<List<Integer>> all = new LinkedHashSet<>(neighbours(point));
        for (List<Integer> one : neighbours(point)) {
            all.addAll(neighbours(one));
        }
        all.remove(point);
        return List.copyOf(all);
    }

    private static List<Integer> with(List<Integer> point, int axis, int option) {
        List<Integer> other = new ArrayList<>(point);
        other.set(axis, option);
        return List.copyOf(other);
    }

    /** Judges the points that are not known yet and not barred by an easier neighbour. */
    public void judgeNew(List<List<Integer>> points) {
        judge(points.stream()
                .filter(point -> known.containsKey(point) || !barredByEasier(point))
                .toList());
    }

    /** Judges the points that are not known yet, those too that were passed over. */
    public void judgeAll(List<List<Integer>> points) {
        judge(points);
        points.forEach(skipped::remove);
    }

    private void judge(List<List<Integer>> points) {
        List<List<Integer>> fresh = new LinkedHashSet<>(points)
                .stream().filter(point -> !known.containsKey(point)).toList();
        List<Judgement> judged = judge.apply(fresh);
        for (int i = 0; i < fresh.size(); i++) {
            known.put(fresh.get(i), judged.get(i));
        }
    }

    private boolean barredByEasier(List<Integer> point) {
        if (skipped.contains(point)) {
            return true;
        }
        for (int axis = 0; axis < sizes.length; axis++) {
            if (easing[axis] && point.get(axis) + 1 < sizes[axis]) {
                List<Integer> easier = with(point, axis, point.get(axis) + 1);
                if (skipped.contains(easier)
                        || (known.containsKey(easier) && known.get(easier).barred())) {
                    skipped.add(point);
                    return true;
                }
            }
        }
        return false;
    }

    /** All points judged, the best first by a weighted sum of the aims: allowed before broken, ties by the order of the options. */
    public List<List<Integer>> ranked(double... weights) {
        return known.keySet().stream().sorted(order(weights)).toList();
    }

    private Comparator<List<Integer>> order(double... weights) {
        return Comparator.<List<Integer>>comparingDouble(
                        point -> known.get(point).violation())
                .thenComparingDouble(point -> known.get(point).weighted(weights))
                .thenComparing(GridSearch::compare);
    }

    private static int compare(List<Integer> one, List<Integer> other) {
        for (int i = 0; i < one.size(); i++) {
            int order = Integer.compare(one.get(i), other.get(i));
            if (order != 0) {
                return order;
            }
        }
        return 0;
    }

    /** What a judged point is worth. */
    public Judgement judgement(List<Integer> point) {
        return known.get(point);
    }

    /** How many points were judged. */
    public int judged() {
        return known.size();
    }

    /** How many points were passed over because an easier one is barred. */
    public int skipped() {
        return skipped.size();
    }
}
