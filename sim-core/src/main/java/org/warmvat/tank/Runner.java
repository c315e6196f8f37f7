package org.warmvat.tank;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import org.warmvat.account.Account;
import org.warmvat.account.Books;
import org.warmvat.design.Design;
import org.warmvat.design.heating.BeamModifier;
import org.warmvat.design.heating.Collector;
import org.warmvat.design.heating.Mounting;
import org.warmvat.design.heating.SolarCircuit;
import org.warmvat.design.season.SeasonTable;
import org.warmvat.design.tank.Shape;
import org.warmvat.engine.Engine;
import org.warmvat.engine.HourSink;
import org.warmvat.engine.Hours;
import org.warmvat.envelope.TankSun;
import org.warmvat.heating.CollectorSun;
import org.warmvat.weather.Weather;

/**
 * Starts any number of tanks in one weather file. What depends on the weather alone, such as the sun on a collector's plane, is
 * prepared once and shared. For any number of threads; each run belongs to one.
 */
public final class Runner {

    private static final int HOURS_PER_DAY = 24;
    private static final int MOST_PREPARED = 32;

    private final Weather file;
    private final Engine engine;
    private final Guest guest;
    // keys are lists: records would serve too, but Java makes their comparison at its first use, for tens of
    // milliseconds
    private final Map<List<Double>, Weather> weathers = new ConcurrentHashMap<>();
    private final Map<List<Object>, CollectorSun> suns = new ConcurrentHashMap<>();
    private final Map<List<Object>, TankSun> tankSuns = new ConcurrentHashMap<>();

    /**
     * A runner.
     *
     * @param file the hourly weather
     * @param engine what integrates
     */
    public Runner(Weather file, Engine engine) {
        this(file, engine, Guest.NONE);
    }

    /** A runner of tanks that have parts beyond those of their designs. */
    public Runner(Weather file, Engine engine, Guest guest) {
        this.file = file;
        this.engine = engine;
        this.guest = guest;
    }

    /** The weather file as it was read. */
    public Weather file() {
        return file;
    }

    /** What integrates. */
    public Engine engine() {
        return engine;
    }

    /** The weather as a design wants it taken. */
    public Weather weather(Design design) {
        return prepared(weathers, taken(design), key -> SiteConventions.applied(design, file));
    }

    /** A tank in its starting state at the beginning of an hour: at the set-point, its envelope steady. */
    public TankRun start(Design design, int hour) {
        return start(design, hour, setpointC(design, hour));
    }

    /** The set-point in force at the beginning of an hour. */
    private double setpointC(Design design, int hour) {
        return design.calendar().isNone()
                ? design.control().setpointC()
                : design.season()
                        .on(SeasonTable.dayOf(file.start().plusHours(hour).toLocalDate()))
                        .setpointC();
    }

    /**
     * A tank that is as cold as the ground and holds no biodegradable solids, its envelope steady and its backup water as cold
     * (equation 12.6).
     */
    public TankRun startCold(Design design, int hour) {
        Weather weather = weather(design);
        double groundC = GroundTemperature.of(design, weather).applyAsDouble(hour * Hours.HOUR_S);
        TankRun run = start(design, hour, groundC);
        design.feed().names().forEach(run::empty);
        return run;
    }

    /**
     * A tank that starts at some slurry temperature, its envelope steady and its backup water as warm as the slurry.
     *
     * @param design the design; it must go with the weather, see {@link StudyRefused#check}
     * @param hour index of the weather hour at whose beginning it starts
     * @param slurryC slurry temperature, °C
     */
    public TankRun start(Design design, int hour, double slurryC) {
        return start(design, hour, slurryC, Supplied.BY_DESIGN, guest);
    }

    /**
     * The same of a tank of which some is known.
     *
     * @param design the design
     * @param hour index of the weather hour at whose beginning it starts
     * @param slurryC slurry temperature, °C
     * @param supplied what is known to have gone in
     * @param beside adds parts beside the tank's own, such as one that looks on
     */
    public TankRun start(Design design, int hour, double slurryC, Supplied supplied, Guest beside) {
        TankNetwork tank = network(design, supplied, beside);
        return new TankRun(tank, file.start(), tank.start(weather(design), hour, slurryC), engine);
    }

    /** A tank at the beginning of the file's first hour after its run-in (model section 10, year). */
    public TankRun runIn(Design design) {
        TankRun run = beforeRunIn(design);
        runIn(design, run, HourSink.IGNORE);
        return run;
    }

    /** A tank at the beginning of its run-in. */
    public TankRun beforeRunIn(Design design) {
        int first = runInHours(design).first();
        return start(design, first < file.hours() ? first : 0);
    }

    /** Runs a tank in that stands at the beginning of its run-in. */
    public void runIn(Design design, TankRun run, HourSink sink) {
        run.over(runInHours(design), sink);
    }

    private Hours runInHours(Design design) {
        int hours = runInDays(design, weather(design)) * HOURS_PER_DAY;
        int first = file.isWholeYear() ? file.hours() - hours : 0;
        return new Hours(first, first + hours);
    }

    /** The whole file after a run-in, added up. */
    public Account year(Design design, Account.Keep keep) {
        return runIn(design).account(new Hours(0, file.hours()), keep);
    }

    /** The lines, balances and columns that runs of a design have. */
    public Books books(Design design) {
        return new Books(network(design, Supplied.BY_DESIGN, guest).network(), Lines.ORDER);
    }

    private TankNetwork network(Design design, Supplied supplied, Guest beside) {
        Weather weather = weather(design);
        return TankNetwork.of(design, weather, sun(design, weather), tankSun(design, weather), supplied, beside);
    }

    /** Whole days of run-in: from the thermal time constant, but no longer than the file. */
    public static int runInDays(Design design, Weather weather) {
        double ua = Conductances.of(design, weather).totalWPerK();
        int days = design.runIn().daysFor(design.contentsHeatCapacityJPerK() / ua);
        return Math.min(days, weather.hours() / HOURS_PER_DAY);
    }

    /** The sun on a design's collector; none without a solar circuit. */
    public Optional<CollectorSun> sun(Design design, Weather weather) {
        return design.solar().map(solar -> prepared(suns, lit(design, solar), key -> sunOn(design, weather)));
    }

    private TankSun tankSun(Design design, Weather weather) {
        List<Object> key = new ArrayList<>(taken(design));
        key.add(design.tank().shape() instanceof Shape.Box box ? box.azimuthDeg() : Double.NaN);
        key.add(design.site().ground().reflectance());
        if (!design.site().surroundings().isNone()) {
            key.add(design.site().surroundings());
        }
        return prepared(tankSuns, key, k -> new TankSun(design, weather));
    }

    /** Keeps memory flat where each design of many has its own plane or sky; what is forgotten is only made again. */
    private static <K, V> V prepared(Map<K, V> known, K key, Function<K, V> maker) {
        if (known.size() >= MOST_PREPARED && !known.containsKey(key)) {
            known.clear();
        }
        return known.computeIfAbsent(key, maker);
    }

    private static CollectorSun sunOn(Design design, Weather weather) {
        return new CollectorSun(
                weather,
                design.solar().orElseThrow().collector(),
                design.collectorShading(),
                design.site().ground().reflectance());
    }

    /** How a design wants its weather taken. */
    private static List<Double> taken(Design design) {
        return SiteConventions.of(design).numbers();
    }

    /** What the sun on a collector depends on besides the file. */
    private static List<Object> lit(Design design, SolarCircuit solar) {
        Collector collector = solar.collector();
        Mounting plane = collector.plane();
        Collector.Incidence incidence = collector.incidence();
        List<Object> all = new ArrayList<>(taken(design));
        all.addAll(List.of(
                plane.tiltDeg(),
                plane.azimuthDeg().orElse(Double.NaN),
                plane.skyModel(),
                collector.eta0(),
                design.site().ground().reflectance()));
        if (incidence.beam() instanceof BeamModifier.Formula formula) {
            all.addAll(List.of(formula.b0(), formula.limitDeg()));
        } else {
            all.add(incidence.beam());
        }
        all.add(incidence.kd().orElse(Double.NaN));
        if (!design.collectorShading().isNone()) {
            all.add(design.collectorShading());
        }
        return all;
    }
}
