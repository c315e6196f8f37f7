package org.warmvat.question.vary;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;

import java.util.Random;
import org.junit.jupiter.api.Test;

class ParetoTest {

    @Test
    void marksAreThoseOfTheDefinition() {
        Random random = new Random(7);
        double[] a = random.ints(200, 0, 20).asDoubleStream().toArray();
        double[] b = random.ints(200, 0, 20).asDoubleStream().toArray();
        boolean[] byDefinition = new boolean[200];
        for (int i = 0; i < 200; i++) {
            byDefinition[i] = true;
            for (int j = 0; j < 200; j++) {
                if (a[j] <= a[i] && b[j] <= b[i] && (a[j] < a[i] || b[j] < b[i])) {
                    byDefinition[i] = false;
                }
            }
        }
        assertArrayEquals(byDefinition, Pareto.front(a, b));
    }

    @Test
    void whatHasNoNumberNeverStands() {
        boolean[] stands = Pareto.front(new double[] {1, Double.NaN, 2}, new double[] {2, 0, 1});
        assertArrayEquals(new boolean[] {true, false, true}, stands);
        assertArrayEquals(new int[] {0, 2}, Pareto.inOrder(stands, new double[] {1, Double.NaN, 2}));
    }
}
