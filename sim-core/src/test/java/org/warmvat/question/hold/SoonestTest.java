package org.warmvat.question.hold;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.warmvat.question.Parallel;

/** The soonest start is that of following every start, and far fewer are followed. */
class SoonestTest {

    private static final int STARTS = 2000;
    private static final List<Integer> ALL = IntStream.range(0, STARTS).boxed().toList();

    /** Whatever the courses, as long as an earlier failure never reaches the temperature later by the clock. */
    @Test
    void findsWhatFollowingEveryStartFinds() {
        try (Parallel parallel = new Parallel(2, Parallel.Progress.SILENT)) {
            for (int seed = 0; seed < 50; seed++) {
                double[] hours = hours(new Random(seed));
                int best = 0;
                for (int i = 1; i < STARTS; i++) {
                    best = hours[i] < hours[best] ? i : best;
                }
                assertEquals(best, new Soonest(ALL, (start, most) -> within(hours[start], most), 10_000).of(parallel));
            }
        }
    }

    @Test
    void followsFewOfThem() {
        try (Parallel parallel = new Parallel(1, Parallel.Progress.SILENT)) {
            AtomicInteger followed = new AtomicInteger();
            new Soonest(
                            ALL,
                            (start, most) -> {
                                followed.incrementAndGet();
                                return within(300 + 200 * Math.cos(start / 300.0), most);
                            },
                            10_000)
                    .of(parallel);
            assertTrue(followed.get() < STARTS / 4, followed + " followed");
        }
    }

    /** Where the weather ends before the temperature comes, the first start is told, and it is never reached. */
    @Test
    void noneIsSoonestWhereNoneReachesIt() {
        try (Parallel parallel = new Parallel(1, Parallel.Progress.SILENT)) {
            assertEquals(0, new Soonest(ALL, (start, most) -> OptionalDouble.empty(), 100).of(parallel));
        }
    }

    private static OptionalDouble within(double hours, int most) {
        return hours <= most ? OptionalDouble.of(hours) : OptionalDouble.empty();
    }

    /** By the clock the temperature comes never earlier for a later failure: steps of nothing up to three hours. */
    private static double[] hours(Random random) {
        double[] hours = new double[STARTS];
        double clock = 200;
        for (int i = 0; i < STARTS; i++) {
            clock += random.nextInt(3) * random.nextDouble();
            hours[i] = Math.max(1, clock - 0.5 * i);
        }
        for (int i = 1; i < STARTS; i++) {
            hours[i] = Math.max(hours[i], hours[i - 1] - 1);
        }
        return hours;
    }
}
