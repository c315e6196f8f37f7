package org.warmvat.tank;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.warmvat.design.Design;
import org.warmvat.engine.HourSink;
import org.warmvat.engine.Hours;
import org.warmvat.engine.exponential.ExponentialEngine;
import org.warmvat.network.Network;
import org.warmvat.sample.StudyTank;
import org.warmvat.weather.Weather;

class TankRunTest {

    private static final Weather WEATHER = StudyTank.april(3, 5, 500);

    /** Without a circuit every other node keeps its own temperature, each slice of a wall too. */
    @Test
    void takesOverEveryNodeOfAnotherTank() {
        Design heated = StudyTank.slicedDesign(StudyTank.collector(2), StudyTank.coil(500, 50, 1));
        Design bare = StudyTank.slicedDesign(Optional.empty(), Optional.empty());
        Runner runner = new Runner(WEATHER, new ExponentialEngine());
        TankRun whole = runner.start(heated, 0);
        whole.over(new Hours(0, 30), HourSink.IGNORE);
        TankRun rest = runner.start(bare, 30);
        Network network = whole.tank().network();
        rest.takeOver(network, whole.state());
        int own = 0;
        for (int node = 0; node < network.nodes().size(); node++) {
            String name = network.nodes().get(node).name();
            if (!name.equals("collector") && !name.equals("backup_circuit")) {
                assertEquals(whole.state().nodeC(node), rest.state().nodeC(own), 0.0, name);
                own++;
            }
        }
        assertEquals(rest.tank().network().nodes().size(), own);
    }
}
