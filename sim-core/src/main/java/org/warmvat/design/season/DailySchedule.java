package org.warmvat.design.season;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.warmvat.design.keys.Ranges;
import org.warmvat.design.keys.Refused;
import org.warmvat.design.keys.Shown;
import org.warmvat.physics.Require;

/**
 * Windows that return every day, overlaps counted once, windows across midnight cut in two.
 *
 * @param spans disjoint spans within one day in rising order, neither touching nor overlapping; at least one
 */
public record DailySchedule(List<Span> spans) {

    /** Pattern of a time of day. */
    public static final String TIME = "^([01][0-9]|2[0-3]):[0-5][0-9]$";

    /** Pattern of a stretch of the day; its end may be 24:00. */
    public static final String STRETCH = "^([01][0-9]|2[0-3]):[0-5][0-9]-(([01][0-9]|2[0-3]):[0-5][0-9]|24:00)$";

    /** Edges nearer than this are one edge, s. */
    private static final double SAME_S = 1e-6;

    /**
     * A stretch within one day, start included, end excluded.
     *
     * @param startS seconds after midnight, 0..86400
     * @param endS seconds after midnight, after the start, up to 86400
     */
    public record Span(double startS, double endS) {

        /** Refuses a span that is not inside one day or has no length. */
        public Span {
            Require.within("start of a span in s", startS, 0, DailyWindow.DAY_S);
            Require.within("end of a span in s", endS, Math.nextUp(startS), DailyWindow.DAY_S);
        }

        double lengthS() {
            return endS - startS;
        }
    }

    /** Refuses spans that are none, out of order or not apart. */
    public DailySchedule {
        spans = List.copyOf(spans);
        boolean apart = !spans.isEmpty();
        for (int i = 1; i < spans.size(); i++) {
            apart &= spans.get(i - 1).endS() < spans.get(i).startS();
        }
        Ranges.stated(apart, "", "spans of a day " + spans + ", expected disjoint ones in rising order, at least one");
    }

    /**
     * The schedule of stretches as files write them, such as {@code 22:00-06:00}.
     *
     * @throws Refused when one has no length; its key is the entry's place
     */
    public static DailySchedule ofText(List<String> stretches) {
        List<DailyWindow> windows = new ArrayList<>();
        for (int i = 0; i < stretches.size(); i++) {
            // a file may hold anything in place of a text
            String stretch = String.valueOf(((List<?>) stretches).get(i));
            Ranges.stated(
                    stretch.matches(STRETCH),
                    "[" + i + "]",
                    Shown.quoted(stretch) + ", expected a stretch such as 22:00-06:00");
            int startS = secondOfDay(stretch.substring(0, 5));
            int lengthS = secondOfDay(stretch.substring(6)) - startS;
            Ranges.stated(
                    lengthS != 0,
                    "[" + i + "]",
                    "\"" + stretch + "\" has no length, expected an end other than the start");
            windows.add(new DailyWindow(startS, lengthS > 0 ? lengthS : lengthS + DailyWindow.DAY_S));
        }
        return of(windows);
    }

    private static int secondOfDay(String time) {
        return Integer.parseInt(time.substring(0, 2)) * 3600 + Integer.parseInt(time.substring(3, 5)) * 60;
    }

    /** Open the whole day, every day. */
    public static DailySchedule continuous() {
        return of(List.of(DailyWindow.ALL_DAY));
    }

    /**
     * The schedule of some windows, which may overlap and may cross midnight.
     *
     * @throws IllegalArgumentException without any window
     */
    public static DailySchedule of(List<DailyWindow> windows) {
        List<Span> pieces = new ArrayList<>();
        for (DailyWindow window : windows) {
            double endS = window.startSecondOfDay() + window.durationS();
            pieces.add(new Span(window.startSecondOfDay(), Math.min(endS, DailyWindow.DAY_S)));
            if (endS > DailyWindow.DAY_S) {
                pieces.add(new Span(0, endS - DailyWindow.DAY_S));
            }
        }
        pieces.sort(Comparator.comparingDouble(Span::startS));
        List<Span> merged = new ArrayList<>();
        for (Span piece : pieces) {
            int last = merged.size() - 1;
            if (last >= 0 && piece.startS() <= merged.get(last).endS()) {
                Span before = merged.get(last);
                merged.set(last, new Span(before.startS(), Math.max(before.endS(), piece.endS())));
            } else {
                merged.add(piece);
            }
        }
        return new DailySchedule(merged);
    }

    /** Whether it never closes. */
    public boolean isContinuous() {
        // spans neither touch nor overlap: only one alone fills the day
        return spans.get(0).lengthS() >= DailyWindow.DAY_S;
    }

    /** Open time of a day, s. */
    public double openSecondsPerDay() {
        double open = 0;
        for (int i = 0; i < spans.size(); i++) {
            open += spans.get(i).lengthS();
        }
        return open;
    }

    /**
     * Whether it is open at a second of the day: at a span's start yes, at its end no.
     *
     * @param secondOfDay seconds after midnight, 0 up to but not including 86400
     */
    public boolean isOpenAt(double secondOfDay) {
        for (int i = 0; i < spans.size(); i++) {
            Span span = spans.get(i);
            if (secondOfDay >= span.startS() && secondOfDay < span.endS()) {
                return true;
            }
        }
        return false;
    }

    /**
     * Seconds from a second of the day to the next edge strictly after it; infinite when it never closes. Midnight inside an
     * open stretch counts as an edge, which changes nothing.
     *
     * @param secondOfDay seconds after midnight, 0 up to but not including 86400
     */
    public double untilNextEdgeS(double secondOfDay) {
        if (isContinuous()) {
            return Double.POSITIVE_INFINITY;
        }
        double next = DailyWindow.DAY_S + spans.get(0).startS();
        for (int i = 0; i < spans.size(); i++) {
            Span span = spans.get(i);
            if (span.startS() > secondOfDay + SAME_S) {
                next = Math.min(next, span.startS());
            }
            if (span.endS() > secondOfDay + SAME_S) {
                next = Math.min(next, span.endS());
            }
        }
        return next - secondOfDay;
    }

    /** As the file would write it: {@code 22:00-06:00, 12:00-14:00}. */
    @Override
    public String toString() {
        return spans.stream()
                .map(span -> clock(span.startS()) + "-" + clock(span.endS()))
                .collect(Collectors.joining(", "));
    }

    private static String clock(double secondOfDay) {
        long minutes = Math.round(secondOfDay / 60);
        return String.format(Locale.ROOT, "%02d:%02d", minutes / 60, minutes % 60);
    }
}
