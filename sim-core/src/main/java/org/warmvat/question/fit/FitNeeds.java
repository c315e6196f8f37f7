package org.warmvat.question.fit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.warmvat.log.Log;
import org.warmvat.tank.StudyRefused;

/** What a log must have before anything can be found from it. */
final class FitNeeds {

    private static final int FEWEST_READINGS = 12;
    private static final double SHORTEST_H = 3;
    private static final double SHARE_OF_TIME_CONSTANT = 0.05;
    private static final double LEAST_MOVE_K = 0.2;
    private static final double LEAST_DIFFERENCE_K = 2;
    private static final double HOUR_S = 3600;

    private FitNeeds() {}

    /**
     * Refuses a log that cannot tell anything, with what it would need.
     *
     * @param log all of it
     * @param stretches the log's stretches
     * @param aroundC what is around the tank at each reading, stretch after stretch
     * @param timeConstantH of the tank as drawn
     */
    static void check(Log log, List<Log> stretches, double[] aroundC, double timeConstantH) throws StudyRefused {
        List<String> faults = new ArrayList<>();
        double[] slurryC = stretches.stream()
                .flatMapToDouble(stretch -> Arrays.stream(stretch.slurryC().values()))
                .toArray();
        double hours = stretches.stream().mapToDouble(Log::spanS).sum() / HOUR_S;
        tooShort(slurryC.length, hours, timeConstantH, faults, leftOut(log, hours));
        tooFlat(stretches, faults);
        tooNear(slurryC, aroundC, faults);
        StudyRefused.ifAny(faults);
    }

    /** Refuses a log of which not even one stretch is left. */
    static void checkNotInPieces(Log log, List<Log> stretches) throws StudyRefused {
        if (stretches.isEmpty()) {
            throw new StudyRefused(String.format(
                            Locale.ROOT,
                            "the log is too short: %d %s over %.1f h, expected at least %d over %.0f h and more",
                            log.slurryC().size(),
                            log.slurryC().size() == 1 ? "reading" : "readings",
                            log.spanS() / HOUR_S,
                            FEWEST_READINGS,
                            SHORTEST_H)
                    + leftOut(log, 0));
        }
    }

    private static String leftOut(Log log, double usedH) {
        double leftOutH = log.spanS() / HOUR_S - usedH;
        return leftOutH < 1
                ? ""
                : String.format(
                        Locale.ROOT,
                        "; %.1f h of the log are left out, where rows are missing or a heat has no value: write 0 where nothing went"
                                + " in",
                        leftOutH);
    }

    private static void tooShort(
            int readings, double hours, double timeConstantH, List<String> faults, String leftOut) {
        double needed = Math.max(SHORTEST_H, SHARE_OF_TIME_CONSTANT * timeConstantH);
        if (readings < FEWEST_READINGS || hours < needed) {
            faults.add(String.format(
                    Locale.ROOT,
                    "the log is too short: %d readings over %.1f h, expected at least %d over %.0f h (a twentieth of the time"
                            + " constant of %.0f h as drawn, and 3 h); let the tank cool for longer, better for several days%s",
                    readings,
                    hours,
                    FEWEST_READINGS,
                    Math.ceil(needed),
                    timeConstantH,
                    leftOut));
        }
    }

    private static void tooFlat(List<Log> stretches, List<String> faults) {
        double moved = stretches.stream()
                .mapToDouble(stretch -> spread(stretch.slurryC().values()))
                .max()
                .orElse(0);
        if (moved < LEAST_MOVE_K) {
            faults.add(String.format(
                    Locale.ROOT,
                    "the log is flat: the slurry moves by %.2f K, expected %.1f K or more; let the tank cool for a night, or heat"
                            + " it by a known electric heat for some hours",
                    moved,
                    LEAST_MOVE_K));
        }
    }

    private static void tooNear(double[] slurryC, double[] aroundC, List<String> faults) {
        double difference = 0;
        for (int i = 0; i < slurryC.length; i++) {
            difference += Math.abs(slurryC[i] - aroundC[i]) / slurryC.length;
        }
        if (difference < LEAST_DIFFERENCE_K) {
            faults.add(String.format(
                    Locale.ROOT,
                    "the slurry is as warm as its surroundings (%.1f K apart on the mean), expected %.0f K or more, better 20 K; log"
                            + " a warm tank in cold weather",
                    difference,
                    LEAST_DIFFERENCE_K));
        }
    }

    private static double spread(double[] values) {
        return Arrays.stream(values).max().orElse(0)
                - Arrays.stream(values).min().orElse(0);
    }
}
