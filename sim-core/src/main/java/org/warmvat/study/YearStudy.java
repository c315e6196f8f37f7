package org.warmvat.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.warmvat.design.Design;
import org.warmvat.engine.Engine;
import org.warmvat.engine.HourSink;
import org.warmvat.engine.Hours;
import org.warmvat.result.Location;
import org.warmvat.result.Marks;
import org.warmvat.result.Period;
import org.warmvat.result.RunResult;
import org.warmvat.tank.Runner;
import org.warmvat.tank.StudyRefused;
import org.warmvat.tank.TankRun;
import org.warmvat.weather.Weather;

/** The main job: a run-in and then the whole weather file (model section 10, year). */
public final class YearStudy {

    private static final int HOURS_PER_DAY = 24;

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
     * @throws org.warmvat.engine.EngineFailure when the run cannot be completed
     */
    public static RunResult run(Design design, Weather file, Engine engine, HourSink progress) throws StudyRefused {
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
    public static RunResult run(Design design, Runner runner, HourSink progress) throws StudyRefused {
        StudyRefused.check(design, runner.file());
        Weather weather = runner.weather(design);
        TankRun run = runner.runIn(design);
        HourLog log = new HourLog(run.tank(), run.state(), 0, weather.hours(), progress);
        run.over(new Hours(0, weather.hours()), log);
        return result(design, weather, runner.engine(), Runner.runInDays(design, weather), log);
    }

    private static RunResult result(Design design, Weather weather, Engine engine, int runInDays, HourLog log) {
        Periods periods = new Periods(design, log, weather.start());
        List<Period> days = periods.days();
        return new RunResult(
                design.title(),
                new Location(weather.site().name(), weather.site().latitudeDeg()),
                engine.name(),
                runInDays,
                marks(design),
                periods.whole(),
                periods.months(),
                days,
                HourlySeries.of(design, weather, log),
                Warnings.of(design, log, weather.start(), days),
                assumed(design, weather, runInDays));
    }

    private static Marks marks(Design design) {
        return new Marks(
                design.control().setpointC(),
                design.control().minimumC(),
                design.tank().liquidVolumeM3(),
                design.solar().isPresent(),
                Tariffs.bought(design),
                design.gas().isPresent(),
                design.prices().primaryEnergyFactor(),
                Tariffs.of(design));
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
