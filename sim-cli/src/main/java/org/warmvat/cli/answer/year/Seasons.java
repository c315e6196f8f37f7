package org.warmvat.cli.answer.year;

import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.warmvat.account.Period;
import org.warmvat.question.year.YearResult;

/**
 * Splits a run into meteorological seasons of whole calendar months (December to February is winter in the north, summer in
 * the south). A run shorter than ten months is split into its months instead, since its seasons would be stumps.
 */
final class Seasons {

    private static final List<String> FROM_DECEMBER_NORTH = List.of("winter", "spring", "summer", "autumn");
    private static final int FEWEST_MONTHS = 10;

    private Seasons() {}

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
}
