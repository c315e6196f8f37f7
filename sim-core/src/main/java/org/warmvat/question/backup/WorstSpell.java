package org.warmvat.question.backup;

import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.warmvat.account.Account;
import org.warmvat.engine.Hours;
import org.warmvat.question.Parallel;
import org.warmvat.tank.Course;
import org.warmvat.tank.KeyFigures;

/** The days around the coldest moment of the slurry with a heater a tenth smaller than the minimum asks for. */
record WorstSpell(List<BackupSite> sites, Parallel parallel) {

    private static final double SMALLER = 0.9;
    private static final int HOURS_PER_DAY = 24;
    private static final int BEFORE_H = 7 * HOURS_PER_DAY;
    private static final int AFTER_H = 4 * HOURS_PER_DAY;

    /**
     * The spell.
     *
     * @param need what the heaters must do
     * @param largestW taken where nothing is enough, W
     */
    BackupResult.Spell spell(BackupResult.Need need, double largestW) {
        double chosenW = need.chosenW().orElse(largestW);
        double smallerW = SMALLER * need.forFloorW().orElse(largestW);
        List<Account> accounts = parallel.map(sites, site -> site.year().year(site.with(smallerW), Account.Keep.SUMS));
        int file = IntStream.range(0, sites.size())
                .boxed()
                .min(Comparator.comparingDouble(i -> accounts.get(i).whole().of(KeyFigures.LEAST_C)))
                .orElseThrow();
        BackupSite site = sites.get(file);
        int worst = accounts.get(file).leastHour();
        int from = Math.max(0, worst - BEFORE_H);
        int to = Math.min(site.year().file().hours(), worst + AFTER_H);
        List<Course> courses = parallel.map(
                List.of(chosenW, smallerW),
                power -> Course.of(site.year().runIn(site.with(power)), new Hours(0, to))
                        .part(from, to));
        return new BackupResult.Spell(
                file,
                site.year().file().start().plusHours(worst),
                chosenW,
                smallerW,
                accounts.stream()
                        .map(account -> account.whole().of(KeyFigures.BELOW_FLOOR_HOURS))
                        .toList(),
                courses.get(0),
                courses.get(1));
    }
}
