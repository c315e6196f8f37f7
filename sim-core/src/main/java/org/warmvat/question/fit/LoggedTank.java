package org.warmvat.question.fit;

import java.util.Arrays;
import java.util.Optional;
import java.util.stream.DoubleStream;
import org.warmvat.design.Design;
import org.warmvat.design.heating.BackupCircuit;
import org.warmvat.design.surroundings.Place;
import org.warmvat.engine.Engine;
import org.warmvat.engine.HourSink;
import org.warmvat.engine.Hours;
import org.warmvat.log.Log;
import org.warmvat.log.LogColumn;
import org.warmvat.log.Steps;
import org.warmvat.network.KnownRate;
import org.warmvat.network.Part;
import org.warmvat.network.State;
import org.warmvat.tank.Runner;
import org.warmvat.tank.Supplied;
import org.warmvat.tank.TankRun;
import org.warmvat.weather.Weather;

/** A tank along one stretch of its log, fed and heated as logged. */
final class LoggedTank implements Along {

    private static final double START_S = LogHours.FIRST * LogHours.HOUR_S;
    private static final double SAME_S = 1e-3;

    private final Log log;
    private final Weather weather;
    private final Runner runner;
    private final Supplied supplied;

    /**
     * A tank along a stretch.
     *
     * @param log the stretch
     * @param design the tank as drawn
     * @param weather the weather along it
     * @param engine what integrates
     */
    LoggedTank(Log log, Design design, Weather weather, Engine engine) {
        this.log = log;
        this.weather = weather;
        runner = new Runner(weather, engine);
        supplied = supplied(design);
    }

    private LoggedTank(LoggedTank other, Supplied supplied) {
        log = other.log;
        weather = other.weather;
        runner = other.runner;
        this.supplied = supplied;
    }

    Weather weather() {
        return weather;
    }

    /** Whether the design's own heater is on, since the log says nothing of it. */
    boolean heatsByDesign() {
        return supplied.backupHeatW().isEmpty() && supplied.backupPowerW().isEmpty();
    }

    LoggedTank withoutHeater() {
        return new LoggedTank(this, supplied.withBackupHeat(KnownRate.NONE));
    }

    private Supplied supplied(Design design) {
        Optional<KnownRate> heat = course(LogColumn.BACKUP_HEAT, 1);
        Optional<KnownRate> power = Optional.empty();
        if (heat.isEmpty()) {
            double efficiency = design.backup().map(BackupCircuit::efficiency).orElse(1.0);
            Optional<KnownRate> electric = course(LogColumn.BACKUP_ELECTRIC, efficiency);
            boolean throughWater = design.backup()
                    .filter(backup -> backup.through() instanceof BackupCircuit.Circuit)
                    .isPresent();
            heat = throughWater ? Optional.empty() : electric;
            power = throughWater ? electric : Optional.empty();
        }
        boolean airIsRoom = design.tank().place() instanceof Place.Indoors
                && log.readings(LogColumn.AIR).isPresent();
        return new Supplied(
                course(LogColumn.SOLAR_HEAT, 1),
                heat,
                power,
                course(LogColumn.FEED, 1),
                course(LogColumn.MIXER, 1),
                airIsRoom);
    }

    private Optional<KnownRate> course(LogColumn column, double factor) {
        return log.steps(column).map(steps -> new LoggedCourse(steps, factor));
    }

    /** Steps of the log on the clock of the weather along it. */
    private record LoggedCourse(Steps steps, double factor) implements KnownRate {

        @Override
        public double at(double timeS) {
            return factor * steps.at(timeS - START_S);
        }

        @Override
        public double nextJumpS(double timeS) {
            return START_S + steps.nextEdgeS(timeS - START_S);
        }
    }

    @Override
    public double[] slurryC(Design design, double startC) {
        Probe probe = new Probe(log.slurryC().timesS(), startC);
        TankRun run = runner.start(design, 0, startC, supplied, (assembly, surroundings) -> assembly.part(probe));
        run.over(new Hours(LogHours.FIRST, weather.hours()), HourSink.IGNORE);
        return probe.slurryC;
    }

    /** Reads the slurry at the log's times. */
    private static final class Probe implements Part {

        private final double[] timeS;
        private final double[] slurryC;

        Probe(double[] sinceStartS, double startC) {
            timeS = Arrays.stream(sinceStartS).map(t -> t + START_S).toArray();
            slurryC = new double[timeS.length];
            Arrays.fill(slurryC, Double.NaN);
            if (sinceStartS[0] == 0) {
                slurryC[0] = startC;
            }
        }

        private int after(double t) {
            int found = Arrays.binarySearch(timeS, t);
            return found >= 0 ? found + 1 : -found - 1;
        }

        @Override
        public double nextJumpS(double t) {
            int next = after(t);
            return next == timeS.length ? Double.POSITIVE_INFINITY : timeS[next];
        }

        @Override
        public void reached(double t, State state) {
            int last = after(t + SAME_S) - 1;
            if (last >= 0 && Math.abs(timeS[last] - t) <= SAME_S) {
                slurryC[last] = state.nodeC(0);
            }
        }
    }

    /** What is around the tank at the log's times. */
    DoubleStream aroundC(Place place) {
        boolean room = place instanceof Place.Indoors && !supplied.airIsRoom();
        return Arrays.stream(log.slurryC().timesS())
                .map(t ->
                        room ? ((Place.Indoors) place).roomC() : weather.airC().at(t + START_S));
    }
}
