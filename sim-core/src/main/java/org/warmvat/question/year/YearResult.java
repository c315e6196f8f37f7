package org.warmvat.question.year;

import java.util.List;
import java.util.Optional;
import org.warmvat.account.Hourly;
import org.warmvat.account.Period;
import org.warmvat.design.Design;
import org.warmvat.network.Warning;
import org.warmvat.question.GasRange;
import org.warmvat.weather.Site;

/**
 * Everything a run over a weather file found.
 *
 * @param design the design that ran
 * @param site where the weather belongs
 * @param engine which engine ran: {@code reference} or {@code fast}
 * @param runInDays days run before the first hour
 * @param whole the whole run
 * @param months calendar months in order
 * @param days calendar days in order
 * @param hourly hour by hour
 * @param warnings what the user must know
 * @param gas low and high gas, where gas is computed
 */
public record YearResult(
        Design design,
        Site site,
        String engine,
        int runInDays,
        Period whole,
        List<Period> months,
        List<Period> days,
        Hourly hourly,
        List<Warning> warnings,
        Optional<GasRange> gas) {}
