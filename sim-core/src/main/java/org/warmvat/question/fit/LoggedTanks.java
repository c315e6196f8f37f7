package org.warmvat.question.fit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import org.warmvat.design.Design;
import org.warmvat.design.surroundings.Place;
import org.warmvat.engine.Engine;
import org.warmvat.log.Log;
import org.warmvat.log.LogColumn;
import org.warmvat.tank.Conductances;
import org.warmvat.tank.GroundTemperature;
import org.warmvat.tank.StudyRefused;
import org.warmvat.weather.Weather;

/** A tank along each stretch of its log. */
final class LoggedTanks {

    private static final int FEWEST_READINGS = 4;
    private static final double HOUR_S = 3600;

    /** By so much a missing row's unknown heat may move the slurry without harm. */
    private static final double DOUBTFUL_K = 0.03;

    private static final double COOLER_THAN_HEATED_K = 0.5;

    private final Design design;
    private final List<Log> stretches;
    private final List<LoggedTank> tanks;
    private final List<String> notes;
    private final Doubts doubts;

    private record Doubts(Optional<ClockDoubt> clock, UnitDoubt units) {}

    private LoggedTanks(Design design, List<Log> stretches, List<LoggedTank> tanks, List<String> notes, Doubts doubts) {
        this.design = design;
        this.stretches = stretches;
        this.tanks = tanks;
        this.notes = notes;
        this.doubts = doubts;
    }

    /**
     * Lays a tank along a log.
     *
     * @throws StudyRefused when the log lacks what nothing else tells
     * @throws StudyRefused when design and weather do not go together
     */
    static LoggedTanks of(Design design, Log read, Optional<Weather> file, Engine engine) throws StudyRefused {
        Log log = file.isPresent() ? read : inItsRoom(design, read);
        refuseWhatIsMissing(design, log, file);
        List<Log> stretches = log.stretches(FEWEST_READINGS, DOUBTFUL_K * design.contentsHeatCapacityJPerK());
        FitNeeds.checkNotInPieces(log, stretches);
        List<LoggedTank> tanks = new ArrayList<>();
        for (Log stretch : stretches) {
            Weather weather = LogWeather.of(stretch, along(file, stretch), ground(design, file));
            StudyRefused.check(design, weather);
            tanks.add(new LoggedTank(stretch, design, weather, engine));
        }
        LoggedTanks all =
                new LoggedTanks(design, stretches, tanks, notes(design, tanks, log), doubts(design, log, file));
        FitNeeds.check(log, stretches, all.aroundC(), all.timeConstantH(design));
        return all;
    }

    private static Optional<FileAlong> along(Optional<Weather> file, Log log) throws StudyRefused {
        return file.isPresent() ? Optional.of(FileAlong.of(file.get(), log)) : Optional.empty();
    }

    /** A tank in a room that nobody measured stands in that of the design. */
    private static Log inItsRoom(Design design, Log log) {
        return design.tank().place() instanceof Place.Indoors room
                        && log.readings(LogColumn.AIR).isEmpty()
                ? log.with(
                        LogColumn.AIR,
                        room.roomC(),
                        String.format(
                                Locale.ROOT,
                                "The room is as warm as the design says, %.1f °C, all along.",
                                room.roomC()))
                : log;
    }

    private static Doubts doubts(Design design, Log log, Optional<Weather> file) throws StudyRefused {
        Optional<FileAlong> along = along(file, log);
        return new Doubts(along.flatMap(there -> ClockDoubt.of(log, there)), UnitDoubt.of(design, log, along));
    }

    private static Optional<DoubleUnaryOperator> ground(Design design, Optional<Weather> file) {
        return file.filter(weather -> GroundTemperature.isKnown(design, weather))
                .map(weather -> GroundTemperature.of(design, weather));
    }

    private static List<String> notes(Design design, List<LoggedTank> tanks, Log log) {
        List<String> notes = new ArrayList<>(tanks.get(0).weather().assumptions());
        notes.replaceAll(note -> note.replaceFirst("^The weather file has ", "The weather along the log has "));
        List<String> goOn = new ArrayList<>();
        if (design.feed().totalKgPerDay() > 0 && saysNothingOf(log, LogColumn.FEED)) {
            goOn.add("feed");
        }
        if (design.backup().isPresent() && saysNothingOf(log, LogColumn.BACKUP_HEAT, LogColumn.BACKUP_ELECTRIC)) {
            goOn.add("backup heater");
        }
        if (design.solar().isPresent() && saysNothingOf(log, LogColumn.SOLAR_HEAT)) {
            goOn.add("solar circuit");
        }
        goOn.forEach(part -> notes.add("The log says nothing of the " + part + ": the design's goes on."));
        return notes;
    }

    private static boolean saysNothingOf(Log log, LogColumn... columns) {
        return Arrays.stream(columns).allMatch(column -> log.steps(column).isEmpty());
    }

    private static void refuseWhatIsMissing(Design design, Log log, Optional<Weather> file) throws StudyRefused {
        List<String> faults = new ArrayList<>();
        if (file.isEmpty() && log.readings(LogColumn.AIR).isEmpty()) {
            faults.add("nothing tells the air around the tank, expected a column air_c in the log or --weather");
        }
        if (file.isEmpty()
                && design.solar().isPresent()
                && log.steps(LogColumn.SOLAR_HEAT).isEmpty()) {
            faults.add(
                    "nothing tells the heat of the design's solar circuit, expected a column solar_heat_w in the log or --weather");
        }
        StudyRefused.ifAny(faults);
    }

    FitModel model(List<Factor> factors) {
        return new FitModel(design, factors, stretches, List.copyOf(tanks));
    }

    List<String> notes() {
        return notes;
    }

    /** What stands against a finding in which these factors are alike or at the end of what is tried. */
    FitResult.Doubts doubts(List<Factor> alike, List<Factor> atTheEnd) {
        return new FitResult.Doubts(alike, atTheEnd, doubts.clock(), doubts.units());
    }

    /** Whether the log says nothing of the design's heater, and the slurry was cooler than a heater would have let it. */
    boolean heaterIsInDoubt() {
        double calledC = design.control().setpointC() - design.control().bandK() / 2;
        return design.backup().isPresent()
                && tanks.stream().allMatch(LoggedTank::heatsByDesign)
                && stretches.stream()
                        .flatMapToDouble(
                                stretch -> Arrays.stream(stretch.slurryC().values()))
                        .anyMatch(celsius -> celsius < calledC - COOLER_THAN_HEATED_K);
    }

    /** The same with the design's heater off. */
    LoggedTanks withoutHeater(String note) {
        List<String> more = new ArrayList<>(notes);
        more.add(note);
        return new LoggedTanks(
                design, stretches, tanks.stream().map(LoggedTank::withoutHeater).toList(), more, doubts);
    }

    /** What is around the tank at each reading. */
    private double[] aroundC() {
        return tanks.stream()
                .flatMapToDouble(tank -> tank.aroundC(design.tank().place()))
                .toArray();
    }

    Conductances conductances(Design tank) {
        double wind = tanks.stream()
                .mapToDouble(one -> one.weather().meanWindMPerS())
                .average()
                .orElseThrow();
        double air = tanks.stream()
                .mapToDouble(one -> one.weather().meanAirC())
                .average()
                .orElseThrow();
        return Conductances.of(tank, wind, air);
    }

    double uaWPerK(Design tank) {
        return conductances(tank).totalWPerK();
    }

    double timeConstantH(Design tank) {
        return tank.contentsHeatCapacityJPerK() / uaWPerK(tank) / HOUR_S;
    }
}
