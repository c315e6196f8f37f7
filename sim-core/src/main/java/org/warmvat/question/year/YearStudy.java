package org.warmvat.question.year;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.warmvat.account.Account;
import org.warmvat.design.Design;
import org.warmvat.engine.Engine;
import org.warmvat.engine.HourSink;
import org.warmvat.tank.Notices;
import org.warmvat.tank.Runner;
import org.warmvat.tank.StudyRefused;
import org.warmvat.weather.Weather;

/** The main job: a run-in and then the whole weather file (model section 10, year). */
public final class YearStudy {

    private YearStudy() {}

    /**
     * Runs a design through a weather file.
     *
     * @param design the design
     * @param file the hourly weather
     * @param engine what integrates
     * @param progress told of each hour of the run; false ends it
     * @return everything found; its assumptions are those of weather and run
     * @throws StudyRefused when design and weather do not go together
     * @throws org.warmvat.account.LedgerOpen when a balance does not close
     * @throws org.warmvat.engine.EngineFailure when the run cannot be completed
     */
    public static YearResult run(Design design, Weather file, Engine engine, HourSink progress) throws StudyRefused {
        return run(design, new Runner(file, engine), progress);
    }

    /**
     * Runs a design through the weather of a runner that serves other designs too.
     *
     * @param design the design
     * @param runner weather and engine
     * @param progress told of each hour of the run; false ends it
     * @throws StudyRefused when design and weather do not go together
     */
    public static YearResult run(Design design, Runner runner, HourSink progress) throws StudyRefused {
        StudyRefused.check(design, runner.file());
        Weather weather = runner.weather(design);
        FileRun run = FileRun.of(design, runner, Account.Keep.HOURS, progress);
        Account account = run.account();
        int runInDays = Runner.runInDays(design, weather);
        return new YearResult(
                design,
                weather.site(),
                runner.engine().name(),
                runInDays,
                account.whole(),
                account.months(),
                account.days(),
                account.hourly(),
                account.warnings(),
                run.gas(),
                assumed(design, weather, runInDays));
    }

    private static List<String> assumed(Design design, Weather weather, int runInDays) {
        List<String> assumed = new ArrayList<>(weather.assumptions());
        assumed.add(String.format(
                Locale.ROOT,
                "Before the first hour the tank was run in for %d days over the %s days of the weather file.",
                runInDays,
                weather.isWholeYear() ? "last" : "first"));
        if (design.contents().totalSolidsFraction().isEmpty()) {
            assumed.add(String.format(
                    Locale.ROOT,
                    "The contents were taken to hold %.1f %% of total solids: those of the feed less the volatile solids"
                            + " digested at steady state.",
                    100 * design.totalSolidsFraction()));
        }
        assumed.addAll(Notices.of(design, weather));
        return List.copyOf(assumed);
    }
}
