package org.warmvat.question.year;

import java.util.Optional;
import org.warmvat.account.Account;
import org.warmvat.design.Design;
import org.warmvat.design.feeding.Estimate;
import org.warmvat.engine.HourSink;
import org.warmvat.engine.Hours;
import org.warmvat.question.GasFollowed;
import org.warmvat.question.GasRange;
import org.warmvat.tank.Runner;
import org.warmvat.tank.TankRun;

/**
 * A run-in and the whole weather file, with low and high gas beside it.
 *
 * @param account what it added up to
 * @param gas low and high gas, where gas is computed
 */
record FileRun(Account account, Optional<GasRange> gas) {

    /** Runs a design that goes with the runner's weather. */
    static FileRun of(Design design, Runner runner, Account.Keep keep, HourSink progress) {
        TankRun run = runner.beforeRunIn(design);
        Optional<GasFollowed> followed = GasFollowed.of(design, run);
        HourSink follower = followed.<HourSink>map(gas -> gas::hour).orElse(HourSink.IGNORE);
        runner.runIn(design, run, follower);
        followed.ifPresent(GasFollowed::forget);
        Account account = run.account(
                new Hours(0, runner.file().hours()),
                keep,
                (soFar, hour) -> follower.accept(hour) && progress.accept(hour));
        Optional<GasRange> range = GasFollowed.needsOwnRuns(design)
                ? Optional.of(GasFollowed.ofRuns(
                        runner.year(design.at(Estimate.LOW), Account.Keep.MONTHS),
                        runner.year(design.at(Estimate.HIGH), Account.Keep.MONTHS)))
                : followed.map(gas -> gas.range(account));
        return new FileRun(account, range);
    }
}
