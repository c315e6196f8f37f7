package org.warmvat.question.year;

import org.warmvat.account.Account;
import org.warmvat.design.Design;
import org.warmvat.engine.HourSink;
import org.warmvat.tank.Runner;
import org.warmvat.tank.StudyRefused;

/** The main job: a run-in and then the whole weather file (model section 10, year). */
public final class YearStudy {

    private YearStudy() {}

    /**
     * Runs a design through the weather of a runner, which may serve other designs too.
     *
     * @param design the design
     * @param runner weather and engine
     * @param progress told of each hour of the run; false ends it
     * @throws StudyRefused when design and weather do not go together
     * @throws org.warmvat.account.LedgerOpen when a balance does not close
     * @throws org.warmvat.engine.EngineFailure when the run cannot be completed
     */
    public static YearResult run(Design design, Runner runner, HourSink progress) throws StudyRefused {
        StudyRefused.check(design, runner.file());
        FileRun run = FileRun.of(design, runner, Account.Keep.HOURS, progress);
        Account account = run.account();
        return new YearResult(
                design,
                runner.weather(design).site(),
                runner.engine().name(),
                Runner.runInDays(design, runner.weather(design)),
                account.whole(),
                account.months(),
                account.days(),
                account.hourly(),
                account.warnings(),
                run.gas());
    }
}
