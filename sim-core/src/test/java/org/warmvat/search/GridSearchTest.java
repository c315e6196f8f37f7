package org.warmvat.search;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.apache.commons.math3.random.Well19937c;
import org.junit.jupiter.api.Test;

/** Invented catalogues of up to 20 000 points: the quick search finds what trying all finds, and skipping loses nothing. */
class GridSearchTest {

    private static final double[] COST = {1, 0};

    /**
     * A tank in arithmetic: insulation, heater, collector, coil and size, with prices and a loss that falls with insulation; a heater
     * too small is barred.
     */
    private static Function<List<List<Integer>>, List<Judgement>> tank(long seed, int[] sizes) {
        Well19937c random = new Well19937c(seed);
        double[] price = new double[sizes.length];
        for (int i = 0; i < price.length; i++) {
            price[i] = 5 + 30 * random.nextDouble();
        }
        double loss = 400 + 400 * random.nextDouble();
        double sun = 60 + 60 * random.nextDouble();
        return points -> {
            List<Judgement> all = new ArrayList<>();
            for (List<Integer> point : points) {
                double heat = loss / (1 + 0.3 * point.get(0));
                double power = 30 + 40.0 * point.get(1);
                double given = Math.min(
                        heat,
                        sun
                                * point.get(2)
                                / (1 + 0.2 * point.get(2))
                                * (0.5 + 0.5 * point.get(3) / (1.0 + point.get(3))));
                double bought = Math.max(0, heat - given);
                double lacking = Math.max(0, heat / 3 - power);
                double cost = 0.3 * bought;
                for (int i = 0; i < price.length; i++) {
                    cost += price[i] * point.get(i) * 0.1;
                }
                double budget = Math.max(0, cost - 0.3 * bought - 60);
                all.add(new Judgement(lacking > 0, lacking + budget, List.of(cost, bought)));
            }
            return all;
        };
    }

    private static List<List<Integer>> starts(int[] sizes) {
        List<Integer> low = new ArrayList<>();
        List<Integer> middle = new ArrayList<>();
        List<Integer> high = new ArrayList<>();
        for (int size : sizes) {
            low.add(0);
            middle.add(size / 2);
            high.add(size - 1);
        }
        return List.of(low, middle, high);
    }

    @Test
    void theQuickSearchFindsWhatTryingAllFinds() {
        int[] sizes = {9, 8, 7, 6, 6};
        for (long seed = 1; seed <= 5; seed++) {
            GridSearch all = new GridSearch(sizes, new boolean[5], tank(seed, sizes));
            all.exhaust();
            assertEquals(18_144, all.judged());
            for (double[] weights : new double[][] {COST, {0, 1}, {1, 1}}) {
                GridSearch quick =
                        new GridSearch(sizes, new boolean[] {true, true, false, false, false}, tank(seed, sizes));
                quick.descend(starts(sizes), weights);
                List<Integer> best = all.ranked(weights).get(0);
                List<Integer> found = quick.ranked(weights).get(0);
                assertEquals(
                        all.judgement(best).weighted(weights),
                        quick.judgement(found).weighted(weights),
                        1e-12,
                        "catalogue " + seed + ": " + best + " and " + found);
                assertTrue(quick.judged() < 1500, quick.judged() + " judged");
            }
        }
    }

    @Test
    void skippingLosesNothingAndSparesPoints() {
        int[] sizes = {9, 8, 7, 6, 6};
        for (long seed = 1; seed <= 5; seed++) {
            GridSearch plain = new GridSearch(sizes, new boolean[5], tank(seed, sizes));
            plain.exhaust();
            GridSearch skipping =
                    new GridSearch(sizes, new boolean[] {true, true, false, false, false}, tank(seed, sizes));
            skipping.exhaust();
            assertEquals(plain.ranked(COST).get(0), skipping.ranked(COST).get(0));
            assertTrue(skipping.skipped() > 100, "skipped " + skipping.skipped());
            assertEquals(plain.judged(), skipping.judged() + skipping.skipped());
        }
    }

    /** Every point passed over is one that trying it would have barred. */
    @Test
    void onlyTheBarredArePassedOver() {
        int[] sizes = {6, 6, 3, 2, 2};
        GridSearch plain = new GridSearch(sizes, new boolean[5], tank(2, sizes));
        plain.exhaust();
        GridSearch skipping = new GridSearch(sizes, new boolean[] {true, true, false, false, false}, tank(2, sizes));
        skipping.exhaust();
        for (List<Integer> point : plain.ranked(COST)) {
            assertTrue(
                    skipping.judgement(point) != null || plain.judgement(point).barred(), point + " was passed over");
        }
    }

    @Test
    void tiesGoToTheEarlierOptions() {
        GridSearch flat = new GridSearch(
                new int[] {3, 3},
                new boolean[2],
                points -> points.stream()
                        .map(point -> new Judgement(false, 0, List.of(1.0)))
                        .toList());
        flat.exhaust();
        assertEquals(List.of(0, 0), flat.ranked(1).get(0));
    }

    @Test
    void anEmptyAxisIsRefused() {
        assertEquals(
                "an axis of 0 options, expected at least 1",
                assertThrows(
                                IllegalArgumentException.class,
                                () -> new GridSearch(new int[] {0}, new boolean[1], points -> List.of()))
                        .getMessage());
        assertThrows(IllegalArgumentException.class, () -> new Judgement(true, 0, List.of(1.0)));
    }
}
