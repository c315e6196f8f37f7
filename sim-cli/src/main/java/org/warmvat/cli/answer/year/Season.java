package org.warmvat.cli.answer.year;

import java.time.YearMonth;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.warmvat.account.Period;
import org.warmvat.cli.words.Words;
import org.warmvat.heating.BackupPart;
import org.warmvat.heating.SolarPart;

/**
 * What sun and backup gave in a season, or in a month of a short run.
 *
 * @param name {@code winter}, {@code spring}, {@code summer}, {@code autumn}, or a month such as {@code 2025-04}
 * @param months months of the run that belong to it, in order
 * @param solarKWh heat given by the sun
 * @param backupKWh heat given by the backup heater
 */
record Season(String name, List<YearMonth> months, double solarKWh, double backupKWh) {

    static Season of(String name, List<Period> months) {
        return new Season(
                name,
                months.stream().map(month -> YearMonth.parse(month.label())).toList(),
                months.stream().mapToDouble(month -> month.of(SolarPart.HEAT)).sum(),
                months.stream().mapToDouble(month -> month.of(BackupPart.HEAT)).sum());
    }

    /** Solar heat over solar and backup heat; empty when neither gave any. */
    OptionalDouble solarShare() {
        double both = solarKWh + backupKWh;
        return both == 0 ? OptionalDouble.empty() : OptionalDouble.of(solarKWh / both);
    }

    /** When it was: {@code winter (December, January and February)} or {@code April 2025}. */
    String when() {
        if (Character.isDigit(name.charAt(0))) {
            return Words.month(months.get(0));
        }
        List<String> names = months.stream()
                .map(YearMonth::getMonth)
                .distinct()
                .map(Words::month)
                .collect(Collectors.toList());
        return name + " (" + Words.list(names) + ")";
    }
}
