package org.warmvat.design;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Windows that return every day, overlaps counted once, windows across midnight cut in two.
 *
 * @param spans disjoint spans within one day in rising order, neither touching nor overlapping; at least one
 */
public record DailySchedule(List<Span> spans) {

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
            Ranges.within("start of a span in s", startS, 0, DailyWindow.DAY_S);
            Ranges.above("end of a span in s", endS, startS, DailyWindow.DAY_S);
        }

        double lengthS() {
            return endS - startS;
        }
    }

    /** Refuses spans that are none, out of order or not apart. */
    public DailySchedule {
        spans = Ranges.someOf("daily schedule", spans);
        for (int i = 1; i < spans.size(); i++) {
            Ranges.stated(
                    "spans of a day touch or are out of order",
                    spans.get(i - 1).endS() < spans.get(i).startS(),
                    "disjoint spans in rising order");
        }
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
        return openSecondsPerDay() >= DailyWindow.DAY_S;
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
}
