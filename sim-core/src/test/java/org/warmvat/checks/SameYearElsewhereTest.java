package org.warmvat.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDateTime;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.warmvat.account.Period;
import org.warmvat.design.heating.BackupSource;
import org.warmvat.engine.HourSink;
import org.warmvat.engine.exponential.ExponentialEngine;
import org.warmvat.feeding.FeedPart;
import org.warmvat.gas.GasPart;
import org.warmvat.heating.BackupPart;
import org.warmvat.heating.SolarPart;
import org.warmvat.question.year.YearStudy;
import org.warmvat.sample.InventedWeather;
import org.warmvat.sample.TankPlan;
import org.warmvat.tank.Lines;
import org.warmvat.tank.Runner;
import org.warmvat.tank.StudyRefused;
import org.warmvat.weather.HourlyTable;
import org.warmvat.weather.Site;
import org.warmvat.weather.Weather;
import org.warmvat.weather.file.WeatherFiles;

/** The same columns at a place where the sun does the same: the year must come out the same. */
class SameYearElsewhereTest {

    private static final HourlyTable TABLE = WeatherFiles.demonstration().table();
    private static Period here;

    private static Period year(Weather weather) throws StudyRefused {
        TankPlan plan = new TankPlan();
        plan.backup = Optional.of(TankPlan.circuit(BackupSource.ELECTRIC, 1, 500, 8));
        return YearStudy.run(plan.build(), new Runner(weather, new ExponentialEngine()), HourSink.IGNORE)
                .whole();
    }

    @BeforeAll
    static void atHome() throws StudyRefused {
        here = year(WeatherFiles.demonstration());
    }

    /** Two hours further east by a clock two hours ahead: the sun is two hours older, which moves it by less than 0.04 degrees. */
    @Test
    void anotherTimeZone() throws StudyRefused {
        Site site = TABLE.site();
        Site east = new Site(
                "east", site.latitudeDeg(), site.longitudeDeg() + 30, site.elevationM(), site.utcOffsetH() + 2);
        same(year(new Weather(InventedWeather.moved(TABLE, east, TABLE.start()))), 0.001);
    }

    /**
     * The other hemisphere half a year later, the collector turned with it. The earth's path is no circle: half a year apart
     * the sun's clock differs by up to twenty minutes and its declination by up to half a degree.
     */
    @Test
    void theOtherHemisphere() throws StudyRefused {
        Site site = TABLE.site();
        Site south = new Site("south", -site.latitudeDeg(), site.longitudeDeg(), site.elevationM(), site.utcOffsetH());
        LocalDateTime start = TABLE.start().plusDays(182);
        Weather mirrored = new Weather(InventedWeather.moved(TABLE, south, start));
        same(year(mirrored), 0.02);
    }

    private static void same(Period there, double within) {
        same("solar heat", here.of(SolarPart.HEAT), there.of(SolarPart.HEAT), within);
        same("backup heat", here.of(BackupPart.HEAT), there.of(BackupPart.HEAT), within);
        same("losses", Lines.lossKWh(here), Lines.lossKWh(there), within);
        same("feed", here.of(FeedPart.FEED), there.of(FeedPart.FEED), within);
        same("methane", here.of(GasPart.METHANE_MADE), there.of(GasPart.METHANE_MADE), within);
    }

    private static void same(String what, double one, double other, double within) {
        assertEquals(one, other, within * one, what);
    }
}
