package org.warmvat.network;

import java.util.Arrays;
import java.util.List;

/**
 * Times of day during which something is open, the same every day; windows may cross midnight and overlap (overlapping
 * windows count once, model.md 3.1).
 */
public final class DailySchedule {

    /** Length of a day, s. */
    public static final double DAY_S = 86_400;

    /** Edges nearer than this are one edge, s. */
    private static final double SAME_S = 1e-6;

    private final double[] opensS;
    private final double[] closesS;

    private DailySchedule(double[] opensS, double[] closesS) {
        this.opensS = opensS;
        this.closesS = closesS;
    }

    /** Open all day. */
    public static DailySchedule always() {
        return new DailySchedule(new double[] {0}, new double[] {DAY_S});
    }

    /**
     * A window of a day.
     *
     * @param startS second of the day at which it opens, 0 to 86 400
     * @param durationS how long it stays open, up to a day
     */
    public record Window(double startS, double durationS) {}

    /** A schedule of windows; none means never open. */
    public static DailySchedule of(List<Window> windows) {
        double[][] pieces = windows.stream()
                .flatMap(window -> List.of(
                        new double[] {window.startS(), Math.min(DAY_S, window.startS() + window.durationS())},
                        new double[] {0, Math.max(0, window.startS() + window.durationS() - DAY_S)})
                        .stream())
                .filter(piece -> piece[1] - piece[0] > SAME_S)
                .sorted((a, b) -> Double.compare(a[0], b[0]))
                .toArray(double[][]::new);
        double[] opens = new double[pieces.length];
        double[] closes = new double[pieces.length];
        int count = 0;
        for (double[] piece : pieces) {
            if (count > 0 && piece[0] <= closes[count - 1] + SAME_S) {
                closes[count - 1] = Math.max(closes[count - 1], piece[1]);
            } else {
                opens[count] = piece[0];
                closes[count++] = piece[1];
            }
        }
        return new DailySchedule(Arrays.copyOf(opens, count), Arrays.copyOf(closes, count));
    }

    /** Whether the schedule is open at a second of the day. */
    public boolean isOpen(double secondOfDay) {
        for (int i = 0; i < opensS.length; i++) {
            if (secondOfDay >= opensS[i] && secondOfDay < closesS[i]) {
                return true;
            }
        }
        return false;
    }

    /** How long the schedule is open a day, s. */
    public double openSPerDay() {
        double open = 0;
        for (int i = 0; i < opensS.length; i++) {
            open += closesS[i] - opensS[i];
        }
        return open;
    }

    /**
     * Seconds from a second of the day to the next edge strictly after it; infinite when always or never open. Midnight
     * inside a window is reported as an edge, which costs a restart and changes nothing.
     */
    public double untilNextEdgeS(double secondOfDay) {
        if (opensS.length == 0 || (opensS[0] == 0 && closesS[0] == DAY_S)) {
            return Double.POSITIVE_INFINITY;
        }
        double next = DAY_S + opensS[0];
        for (int i = 0; i < opensS.length; i++) {
            if (opensS[i] > secondOfDay + SAME_S) {
                next = Math.min(next, opensS[i]);
            }
            if (closesS[i] > secondOfDay + SAME_S) {
                next = Math.min(next, closesS[i]);
            }
        }
        return next - secondOfDay;
    }
}
