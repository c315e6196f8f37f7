package org.warmvat.weather.doubt;

import java.time.YearMonth;
import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Locale;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import org.warmvat.weather.MonthSummary;
import org.warmvat.weather.Weather;

/**
 * Looks for what is improbable in a weather file: wrong stamps, units, places and sensors. Nothing found here stops a run. The
 * thresholds are conventions, set so that two real typical years and the sample sites raise no alarm.
 */
public final class Doubts {
    private Doubts() {}

    /** All suspicions, those of single months first, in the order of time. */
    public static List<Doubt> of(Weather weather) {
        return weather.kept(Doubts.class, () -> looked(weather));
    }

    private static List<Doubt> looked(Weather weather) {
        List<Doubt> months = new ArrayList<>();
        int from = 0;
        while (from < weather.hours()) {
            Span span = new Span(weather, from, MonthSummary.endOfMonth(weather, from));
            SunlightDoubts.look(span, months);
            StampDoubts.look(span, months);
            SensorDoubts.look(span, months);
            from = span.to();
        }
        List<Doubt> found = merged(months);
        UnitDoubts.look(weather, found);
        TiltDoubts.look(weather, found);
        return List.copyOf(found);
    }

    /** Where the same thing is said of more than three months, the first stands for all. */
    private static List<Doubt> merged(List<Doubt> months) {
        List<Doubt> result = new ArrayList<>();
        for (Doubt.Kind kind : Doubt.Kind.values()) {
            List<Doubt> same = months.stream().filter(s -> s.kind() == kind).toList();
            result.addAll(same.size() <= 3 ? same : List.of(merged(kind, same)));
        }
        return result;
    }

    private static Doubt merged(Doubt.Kind kind, List<Doubt> same) {
        List<String> when = same.stream().map(Doubt::when).distinct().toList();
        String stretch = when.get(0) + " to " + when.get(when.size() - 1);
        return new Doubt(
                kind,
                stretch + " (" + when.size() + " months)",
                same.get(0).sentence() + " The like is seen in " + when.size() + " months, " + stretch + ".");
    }

    /** The hours of one month. */
    record Span(Weather weather, int from, int to) {
        /** The month as 2025-03. */
        String name() {
            return YearMonth.from(weather.start().plusHours(from)).toString();
        }

        int hours() {
            return to - from;
        }

        /** A doubt about the month: its name and a sentence in the form of {@link String#format}. */
        Doubt doubt(Doubt.Kind kind, String form, Object... values) {
            return new Doubt(kind, name(), name() + ": " + String.format(Locale.ROOT, form, values));
        }

        /** The hours in which a value lies above a bound. */
        DoubleSummaryStatistics above(double bound, IntToDoubleFunction value) {
            return IntStream.range(from, to)
                    .mapToDouble(value)
                    .filter(one -> one > bound)
                    .summaryStatistics();
        }
    }
}
