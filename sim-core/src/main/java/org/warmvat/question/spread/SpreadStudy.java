package org.warmvat.question.spread;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.warmvat.account.Account;
import org.warmvat.account.Period;
import org.warmvat.design.Design;
import org.warmvat.design.feeding.Estimate;
import org.warmvat.design.keys.Refused;
import org.warmvat.design.season.SeasonTable;
import org.warmvat.engine.Engine;
import org.warmvat.engine.Hours;
import org.warmvat.gas.GasPart;
import org.warmvat.network.meter.Line;
import org.warmvat.question.Figures;
import org.warmvat.question.GasFollowed;
import org.warmvat.sampling.SaltelliSample;
import org.warmvat.tank.Lines;
import org.warmvat.tank.Runner;
import org.warmvat.tank.StudyRefused;
import org.warmvat.tank.TankRun;
import org.warmvat.weather.Weather;
import org.warmvat.weather.WeatherYear;

/**
 * Runs a tank whose inputs are drawn, each draw through one of the years. All runs are numbered; each can be done alone and gives the same
 * numbers whoever does it, and the result is made from them in order.
 */
public final class SpreadStudy {

    /** Fewest draws. */
    public static final int FEWEST = 8;

    /** Most draws. */
    public static final int MOST = 100_000;

    private static final int MOST_CHECKED = 10_000;

    /** The order in which net energies stand. */
    static final List<Estimate> ESTIMATES = List.of(Estimate.LOW, Estimate.MIDDLE, Estimate.HIGH);

    private final UncertainTank tank;
    private final List<WeatherYear> years;
    private final List<Runner> runners;
    private final Engine engine;
    private final int draws;
    private final long seed;
    private final SaltelliSample sample;
    private final int[] yearOf;
    private final List<Line> lines;
    private final Line leading;

    /**
     * A study.
     *
     * @param tank the design and its inputs, at least one
     * @param years the years, at least one; several are an input too
     * @param engine what integrates
     * @param draws how many draws, {@link #FEWEST} to {@link #MOST}
     * @param seed the same seed gives the same draws
     * @throws StudyRefused when design and weather do not go together
     */
    public SpreadStudy(UncertainTank tank, List<WeatherYear> years, Engine engine, int draws, long seed)
            throws StudyRefused {
        this.tank = tank;
        this.years = years;
        this.engine = engine;
        this.draws = draws;
        this.seed = seed;
        for (WeatherYear year : years) {
            StudyRefused.check(tank.base(), year.weather());
        }
        runners = years.stream().map(year -> new Runner(year.weather(), engine)).toList();
        int inputs = tank.inputs().size();
        sample = new SaltelliSample(inputs + (years.size() > 1 ? 1 : 0), (draws + 1) / 2, seed);
        yearOf = years.size() > 1 ? sample.dealt(inputs, years.size()) : new int[sample.runs()];
        var books = runners.get(0).books(tank.base());
        lines = books.lines().stream()
                .filter(line -> books.has(line) && !line.group().equals("ledger"))
                .toList();
        leading = Lines.leading(books);
    }

    /** How many runs it takes. */
    public int runs() {
        return sample.runs();
    }

    /**
     * Does one of the runs: of a draw its figures, the net energy at low, middle and high gas, and the mean slurry temperature of each day of
     * the year; of a mixed run the net energy alone.
     *
     * @param index its number, from 0
     * @throws DrawRefused when it draws a tank that is not allowed
     */
    public Figures run(int index) {
        UncertainTank.Drawn drawn = drawn(index);
        Runner runner = runner(runners.get(yearOf[index]), drawn);
        return sample.isDraw(index)
                ? draw(drawn, runner)
                : new Figures(new double[] {net(drawn.design(), runner)}, List.of());
    }

    private UncertainTank.Drawn drawn(int index) {
        try {
            return tank.drawn(sample.point(index));
        } catch (Refused refused) {
            throw new DrawRefused(index, refused.faults().get(0).toString(), refused);
        }
    }

    /**
     * Draws the tanks of the runs, of very many the first, without running them, so that one that is not allowed is found before the work.
     *
     * @throws DrawRefused when one is not allowed
     */
    public void check() {
        for (int index = 0; index < Math.min(MOST_CHECKED, runs()); index++) {
            drawn(index);
        }
    }

    private Runner runner(Runner asRead, UncertainTank.Drawn drawn) {
        boolean unchanged = drawn.warmerK() == 0 && drawn.sunFactor() == 1;
        return unchanged
                ? asRead
                : new Runner(asRead.weather(drawn.design()).changed(drawn.warmerK(), drawn.sunFactor()), engine);
    }

    private double net(Design design, Runner runner) {
        return runner.year(design, Account.Keep.SUMS).whole().of(leading);
    }

    private Figures draw(UncertainTank.Drawn drawn, Runner runner) {
        Design design = drawn.design();
        Weather weather = runner.weather(design);
        boolean runsApart = GasFollowed.needsOwnRuns(design);
        Followed followed = new Followed(weather.start(), runsApart ? Optional.empty() : Optional.of(drawn.asFed()));
        TankRun run = runner.beforeRunIn(design);
        runner.runIn(design, run, followed);
        followed.begin();
        Account account =
                run.account(new Hours(0, weather.hours()), Account.Keep.SUMS, (soFar, hour) -> followed.accept(hour));
        Period year = account.whole();
        double[] numbers = Arrays.copyOf(
                lines.stream().mapToDouble(year::of).toArray(), lines.size() + ESTIMATES.size() + SeasonTable.DAYS);
        for (int i = 0; i < ESTIMATES.size(); i++) {
            Estimate gas = ESTIMATES.get(i);
            numbers[lines.size() + i] = runsApart
                    ? net(drawn.asFed().at(gas), runner)
                    : year.of(leading) - year.of(GasPart.GAS_ENERGY) + followed.gasKWh(gas);
        }
        System.arraycopy(followed.dayMeansC(), 0, numbers, lines.size() + ESTIMATES.size(), SeasonTable.DAYS);
        return new Figures(numbers, account.warnings());
    }

    /**
     * The result of all runs.
     *
     * @param runs in the order of their numbers
     */
    public SpreadResult result(List<Figures> runs) {
        SpreadTally tally = new SpreadTally(tank, years, sample, new SpreadTally.Columns(lines, leading));
        return tally.result(runs, draws, yearOf, seed);
    }
}
