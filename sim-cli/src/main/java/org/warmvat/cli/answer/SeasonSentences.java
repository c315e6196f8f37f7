package org.warmvat.cli.answer;

import java.time.LocalDate;
import java.util.List;
import java.util.function.IntPredicate;
import org.warmvat.cli.words.Telling;
import org.warmvat.cli.words.Words;
import org.warmvat.design.Design;
import org.warmvat.design.season.SeasonTable;
import org.warmvat.weather.Weather;

/** What a calendar does to questions about a tank that is to be kept warm. */
public final class SeasonSentences {

    private SeasonSentences() {}

    /**
     * Days of a span that count as warm enough whatever the slurry does.
     *
     * @param withoutMinimum days on which no minimum holds
     * @param warmingUp days of grace after a rest
     */
    public record Apart(long withoutMinimum, long warmingUp) {

        /** The days from one to another, both included. */
        public static Apart of(Design design, LocalDate first, LocalDate last) {
            SeasonTable season = design.season();
            return design.spells().isEmpty()
                    ? new Apart(0, 0)
                    : new Apart(
                            count(
                                    first,
                                    last,
                                    day -> Double.isInfinite(season.on(day).minimumC())),
                            count(
                                    first,
                                    last,
                                    day -> Double.isFinite(season.on(day).minimumC()) && season.isGrace(day)));
        }

        /** The days of all weather files of a question. */
        public static Apart of(Subject asked) {
            long withoutMinimum = 0;
            long warmingUp = 0;
            for (Weather file : asked.weathers()) {
                Apart one = of(
                        asked.design(),
                        file.start().toLocalDate(),
                        file.end().minusSeconds(1).toLocalDate());
                withoutMinimum += one.withoutMinimum;
                warmingUp += one.warmingUp;
            }
            return new Apart(withoutMinimum, warmingUp);
        }

        /** Writes them as figures where the design has a calendar. */
        public void figures(Draft draft, Design design) {
            if (!design.spells().isEmpty()) {
                draft.figure("days_without_minimum", withoutMinimum).figure("days_warming_up", warmingUp);
            }
        }

        private static long count(LocalDate first, LocalDate last, IntPredicate is) {
            return first.datesUntil(last.plusDays(1))
                    .filter(date -> is.test(SeasonTable.dayOf(date)))
                    .count();
        }

        /** They in a sentence; none where there are none. */
        public List<String> sentence() {
            List<String> days = new Telling()
                    .when(withoutMinimum > 0, "on " + withoutMinimum + " of the days no minimum holds")
                    .when(
                            warmingUp > 0,
                            "on " + warmingUp + (withoutMinimum > 0 ? "" : " of the days")
                                    + " the tank is given time to warm up after a rest")
                    .done();
            return days.isEmpty()
                    ? List.of()
                    : List.of("By the calendar " + Words.list(days) + ": these count as warm enough.");
        }
    }

    /** Why a warm-up takes long that begins in a spell of a lower set-point; none elsewhere. */
    public static List<String> ofWarmUp(Design design, LocalDate date) {
        double asked = design.spells().isEmpty()
                ? design.control().setpointC()
                : design.season().on(SeasonTable.dayOf(date)).setpointC();
        return asked >= design.control().setpointC()
                ? List.of()
                : List.of("On " + Words.day(date, false) + " the calendar asks for " + Words.celsius(asked)
                        + " only: the warm-up waits for it to ask for more, and no heater makes it shorter.");
    }
}
