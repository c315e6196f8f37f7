package org.warmvat.cli.answer.year;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.warmvat.account.Period;
import org.warmvat.heating.BackupPart;
import org.warmvat.heating.SolarPart;
import org.warmvat.question.year.YearResult;
import org.warmvat.tank.KeyFigures;

/**
 * What is read out of a run for its sentences.
 *
 * @param seasons heat by season
 * @param worstWeek worst seven days, empty for a shorter run
 * @param coldestDay day of the lowest slurry temperature
 * @param warmestDay day of the highest
 * @param solarPump starts of the solar pump, empty without a solar circuit
 * @param backup starts of the backup, empty without one
 */
record Findings(
        List<Season> seasons,
        Optional<WorstWeek> worstWeek,
        LocalDate coldestDay,
        LocalDate warmestDay,
        Optional<Starts> solarPump,
        Optional<Starts> backup) {

    static Findings of(YearResult run) {
        List<Period> days = run.days();
        return new Findings(
                Season.of(run),
                WorstWeek.of(run),
                date(days.stream().min(Comparator.comparingDouble(day -> day.of(KeyFigures.LEAST_C)))),
                date(days.stream().max(Comparator.comparingDouble(day -> day.of(KeyFigures.MOST_C)))),
                run.design().solar().isPresent()
                        ? Optional.of(Starts.of(run.whole(), days, SolarPart.STARTS))
                        : Optional.empty(),
                run.design().backup().isPresent()
                        ? Optional.of(Starts.of(run.whole(), days, BackupPart.STARTS))
                        : Optional.empty());
    }

    private static LocalDate date(Optional<Period> day) {
        return LocalDate.parse(day.orElseThrow().label());
    }
}
