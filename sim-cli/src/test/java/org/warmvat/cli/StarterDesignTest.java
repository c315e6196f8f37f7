package org.warmvat.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.warmvat.cli.file.DesignDocument;
import org.warmvat.engine.exponential.ExponentialEngine;
import org.warmvat.question.starter.Starter;
import org.warmvat.question.year.BriefYear;
import org.warmvat.tank.KeyFigures;
import org.warmvat.tank.Runner;
import org.warmvat.weather.Weather;
import org.warmvat.weather.file.WeatherFiles;

/** Starter designs run and are not absurd, in a cold and a mild invented climate. */
class StarterDesignTest {

    private static final Path SAMPLES = Path.of("../weather-samples");

    private static Weather climate(String name) throws Exception {
        return WeatherFiles.read(SAMPLES.resolve(name + ".csv"));
    }

    private static DesignDocument starter(double litres, Weather weather) {
        return DesignDocument.parse("starter.yaml", StarterText.of(litres, 36, weather, Starter.AtHand.NOTHING));
    }

    @ParameterizedTest
    @ValueSource(strings = {"cold-continental", "cool-maritime-hills"})
    void noSizeIsShortOfHeat(String name) throws Exception {
        Weather weather = climate(name);
        Runner runner = new Runner(weather, new ExponentialEngine());
        for (double litres : List.of(100.0, 900.0, 5000.0)) {
            DesignDocument document = starter(litres, weather);
            // the file states its lengths to the millimetre
            assertEquals(litres / 1000, document.design().tank().liquidVolumeM3(), 0.01 * litres / 1000);
            BriefYear sums = BriefYear.run(document.design(), runner);
            assertEquals(0, sums.year().of(KeyFigures.BELOW_FLOOR_HOURS), name + " " + litres);
            assertEquals(List.of(), document.cautions());
            // the file and the library give one and the same tank
            assertEquals(Starter.of(litres, 36, weather).design(), document.design());
        }
    }

    @Test
    void coldAsksForMoreFoamAndMoreHeat() throws Exception {
        Weather cold = climate("cold-continental");
        Weather mild = climate("cool-maritime-hills");
        for (double litres : List.of(100.0, 900.0, 5000.0)) {
            DesignDocument there = starter(litres, cold);
            DesignDocument here = starter(litres, mild);
            for (String key : List.of("envelope.insulation_mm", "backup.rated_w")) {
                assertTrue(there.design().number(key) > here.design().number(key), key + " at " + litres);
            }
        }
    }

    @Test
    void everyWordOfTheTemplateIsFilledIn() throws Exception {
        String text = StarterText.of(900, 36, climate("cool-maritime-hills"), Starter.AtHand.NOTHING);
        assertTrue(text.lines().noneMatch(line -> line.matches(".*\\{[a-z_]+}.*")), text);
    }

    /** A first fill passes through mixtures that explode: air is dosed only by who writes it in. */
    @Test
    void aStarterDosesNoAirAndSaysWhy() throws Exception {
        String text = StarterText.of(900, 36, climate("cool-maritime-hills"), Starter.AtHand.NOTHING);
        assertTrue(text.lines().anyMatch(line -> line.strip().startsWith("# air_dosing:")), text);
        assertTrue(text.lines().noneMatch(line -> line.strip().startsWith("air_dosing:")), text);
        assertTrue(text.contains("legs") && text.contains("outlet") && text.contains("cladding: "), text);
    }
}
