package org.warmvat.cli.answer.year;

import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.warmvat.account.Period;
import org.warmvat.cli.words.Words;
import org.warmvat.heating.BackupPart;
import org.warmvat.heating.SolarPart;
import org.warmvat.question.year.YearResult;

/**
 * What sun and backup gave in a season, or in a month of a short run.
 *
 * @param name {@code winter}, {@code spring}, {@code summer}, {@code autumn}, or a month such as {@code 2025-04}
 * @param months months of the run that belong to it, in order
 * @param solarKWh heat given by the sun
 * @param backupKWh heat given by the backup heater
 */
record Season(String name, List<YearMonth> months, double solarKWh, double backupKWh) {

    private static final List<String> FROM_DECEMBER_NORTH = List.of("winter", "spring", "summer", "autumn");
    private static final int FEWEST_MONTHS = 10;

    /** Meteorological seasons of whole calendar months (December to February is winter in the north, summer in the south); a run shorter than
     * ten months is split into its months instead, since its seasons would be stumps. */
    static List<Season> of(YearResult run) {
        return run.months().size() < FEWEST_MONTHS ? monthByMonth(run) : fourSeasons(run);
    }

    private static List<Season> monthByMonth(YearResult run) {
        return run.months().stream()
                .map(month -> Season.of(month.label(), List.of(month)))
                .toList();
    }

    private static List<Season> fourSeasons(YearResult run) {
        boolean south = run.site().latitudeDeg() < 0;
        List<Season> seasons = new ArrayList<>();
        for (String name : FROM_DECEMBER_NORTH) {
            List<Period> months = run.months().stream()
                    .filter(month -> name.equals(season(YearMonth.parse(month.label()), south)))
                    .collect(Collectors.toList());
            if (!months.isEmpty()) {
                seasons.add(Season.of(name, decemberFirst(months)));
            }
        }
        return seasons;
    }

    private static String season(YearMonth month, boolean south) {
        int quarter = month.getMonthValue() % 12 / 3;
        return FROM_DECEMBER_NORTH.get(south ? (quarter + 2) % 4 : quarter);
    }

    /** Puts the months of a season into their order within the season, whatever month the run begins with. */
    private static List<Period> decemberFirst(List<Period> months) {
        return months.stream()
                .sorted((a, b) -> Integer.compare(
                        YearMonth.parse(a.label()).getMonthValue() % 12,
                        YearMonth.parse(b.label()).getMonthValue() % 12))
                .toList();
    }

    private static Season of(String name, List<Period> months) {
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
