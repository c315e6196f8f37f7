package org.warmvat.tank;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.warmvat.design.surroundings.Ground;
import org.warmvat.design.surroundings.GroundWave;
import org.warmvat.design.surroundings.StandsOn;
import org.warmvat.design.tank.Contents;
import org.warmvat.engine.HourSink;
import org.warmvat.engine.exponential.ExponentialEngine;
import org.warmvat.question.year.YearStudy;
import org.warmvat.sample.InventedWeather;
import org.warmvat.sample.TankPlan;
import org.warmvat.weather.HourlyTable;
import org.warmvat.weather.Quantity;
import org.warmvat.weather.Site;
import org.warmvat.weather.Weather;
import org.warmvat.weather.file.WeatherFiles;

/** What is odd but runs, and what does not run at all. */
class NoticesTest {

    @Test
    void theDemonstrationIsNotOdd() {
        assertEquals(List.of(), Notices.of(new TankPlan().build(), WeatherFiles.demonstration()));
    }

    @Test
    void aCollectorThatTurnsItsBackIsNoticed() {
        TankPlan plan = new TankPlan();
        HourlyTable north = InventedWeather.days(0, 2).table();
        Site south = new Site("South (invented)", -40, 0, 0, 0);
        Weather southern = new Weather(InventedWeather.moved(north, south, north.start()));
        // without a stated azimuth it faces the equator wherever it stands
        assertEquals(List.of(), Notices.of(plan.build(), southern));
        plan.azimuthDeg = OptionalDouble.of(180);
        assertEquals(
                List.of(
                        "The collector faces away from the equator (azimuth 180° clockwise from north at latitude -40.0°)."),
                Notices.of(plan.build(), southern));
    }

    @Test
    void solidsFarFromWhatTheFeedLeavesAreNoticed() {
        TankPlan plan = new TankPlan();
        plan.contents = new Contents(1010, Optional.of(0.08), 1600, 0.6);
        assertEquals(
                List.of(
                        "The stated total solids of the contents, 8.0 %, are far from the 2.7 % that feed and digestion would"
                                + " leave."),
                Notices.of(plan.build(), WeatherFiles.demonstration()));
        plan.contents = new Contents(1010, Optional.of(0.05), 1600, 0.6);
        assertEquals(List.of(), Notices.of(plan.build(), WeatherFiles.demonstration()));
    }

    @Test
    void whereTheGroundTemperatureComesFromIsSaid() {
        TankPlan plan = new TankPlan();
        plan.standsOn = StandsOn.GROUND;
        assertEquals(
                List.of("The ground temperature follows a yearly wave fitted to the weather file's air temperature."),
                Notices.of(plan.build(), WeatherFiles.demonstration()));
        plan.ground = new Ground(Optional.of(new GroundWave(9, 7, 30)), 0.05, 0.5, 0.2);
        assertEquals(
                List.of("The ground temperature follows the yearly wave given in the design."),
                Notices.of(plan.build(), WeatherFiles.demonstration()));
    }

    @Test
    void aShortFileWithoutGroundIsRefusedWhereTheDesignStandsOnIt() throws StudyRefused {
        TankPlan plan = new TankPlan();
        plan.standsOn = StandsOn.GROUND;
        StudyRefused refused = assertThrows(
                StudyRefused.class,
                () -> YearStudy.run(
                        plan.build(),
                        new Runner(InventedWeather.days(10, 3), new ExponentialEngine()),
                        HourSink.IGNORE));
        assertEquals(
                List.of(
                        "ground: nothing tells the ground temperature, which this design uses: the weather file has no ground_c"
                                + " column and is shorter than a year; expected ground: {mean_c, amplitude_k, coldest_day} in the"
                                + " design"),
                refused.faults());
        assertEquals(refused.faults().get(0), refused.getMessage());
        // a column in the file is enough, and wins over a wave
        Map<Quantity, double[]> columns = InventedWeather.columns(48, hour -> 5);
        columns.put(Quantity.GROUND, InventedWeather.filled(48, 11));
        StudyRefused.check(plan.build(), InventedWeather.of(columns));
        plan.ground = new Ground(Optional.of(new GroundWave(-20, 0, 30)), 0.05, 0.5, 0.2);
        assertEquals(
                11,
                GroundTemperature.of(plan.build(), InventedWeather.of(columns)).applyAsDouble(3600));
    }
}
