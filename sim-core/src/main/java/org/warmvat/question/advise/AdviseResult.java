package org.warmvat.question.advise;

import java.util.List;
import java.util.Optional;
import org.warmvat.question.backup.BackupResult;
import org.warmvat.question.carry.CarryResult;
import org.warmvat.question.hold.HoldResult;

/**
 * What to do with a design.
 *
 * @param asIs what comes of it as drawn
 * @param byYear the same in each of the years
 * @param recommendations at most seven, the first first
 * @param together what comes of it with all their changes; empty where there are none or they do not go together
 * @param grounds the answers of the questions that were run
 */
public record AdviseResult(
        Outcome asIs,
        List<Outcome> byYear,
        List<Recommendation> recommendations,
        Optional<Outcome> together,
        Answers grounds) {

    /**
     * The answers of the questions that were run; none of them where a slip stood in the way.
     *
     * @param backup the heater
     * @param reserve the heater for a coldest week that is colder still
     * @param hold what happens when the heat fails in the coldest month
     * @param carry whether the sun carries the spring alone, where there is a collector and a spring in the file
     */
    public record Answers(
            Optional<BackupResult> backup,
            Optional<BackupResult> reserve,
            Optional<HoldResult> hold,
            Optional<CarryResult> carry) {}
}
