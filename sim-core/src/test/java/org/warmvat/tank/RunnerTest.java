package org.warmvat.tank;

import static org.junit.jupiter.api.Assertions.assertSame;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.warmvat.design.Design;
import org.warmvat.engine.exponential.ExponentialEngine;
import org.warmvat.heating.CollectorSun;
import org.warmvat.sample.StudyTank;
import org.warmvat.weather.Weather;

class RunnerTest {

    /** As many planes as a runner keeps, each asked for once more: nothing is made twice. */
    @Test
    void keepsTheSunOfManyPlanes() {
        Runner runner = new Runner(StudyTank.april(3, 5, 500), new ExponentialEngine());
        Design design = StudyTank.slicedDesign(StudyTank.collector(2), StudyTank.coil(500, 50, 1));
        Weather weather = runner.weather(design);
        List<Design> planes = IntStream.range(0, 32)
                .mapToObj(i -> design.with("solar.tilt_deg", 20 + i))
                .toList();
        List<Optional<CollectorSun>> made =
                planes.stream().map(plane -> runner.sun(plane, weather)).toList();
        for (int i = 0; i < planes.size(); i++) {
            assertSame(
                    made.get(i).orElseThrow(),
                    runner.sun(planes.get(i), weather).orElseThrow());
        }
    }
}
