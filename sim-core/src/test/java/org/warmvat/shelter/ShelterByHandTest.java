package org.warmvat.shelter;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.warmvat.design.Design;
import org.warmvat.design.surroundings.Ground;
import org.warmvat.design.surroundings.GroundWave;
import org.warmvat.design.surroundings.Place;
import org.warmvat.design.surroundings.Shelter;
import org.warmvat.design.surroundings.ShelterKind;
import org.warmvat.engine.Engine;
import org.warmvat.engine.Hours;
import org.warmvat.engine.exponential.ExponentialEngine;
import org.warmvat.engine.reference.ReferenceEngine;
import org.warmvat.network.KnownRate;
import org.warmvat.network.Node;
import org.warmvat.sample.InventedWeather;
import org.warmvat.sample.TankPlan;
import org.warmvat.tank.Conductances;
import org.warmvat.tank.Guest;
import org.warmvat.tank.Runner;
import org.warmvat.tank.Supplied;
import org.warmvat.tank.TankRun;

/**
 * Exact, by hand: a shed of 30 m2 of boards at 2.5 W/m2K, 20 m3 of air changed once an hour and 10 m2 of floor over 0.5 m2K/W, in air of
 * 5 °C under a sky as warm, on ground of 9 °C, with a tank in it that is heated by 200 W. Cover 75 W/K, air 1200 x 20/3600 = 6.67 W/K,
 * ground 20 W/K: (81.67 x 5 + 20 x 9 + 200)/101.67 = 7.75 °C, and the tank stands above that by 200 W over its own conductance to still air.
 */
class ShelterByHandTest {

    private static final double HEAT_W = 200;

    static List<Engine> engines() {
        return List.of(new ReferenceEngine(), new ExponentialEngine());
    }

    private static TankPlan tank() {
        TankPlan plan = new TankPlan().quiet();
        plan.place = new Place.InShelter();
        plan.shelter = Optional.of(new Shelter(
                ShelterKind.TIMBER,
                new Shelter.Size(10, 30, 20),
                new Shelter.Cover(2.5, 0, 0.6),
                new Shelter.Airing(1, 0.2, 0.4, Double.POSITIVE_INFINITY, 20),
                0.5,
                Optional.of(400.0)));
        plan.ground = new Ground(Optional.of(new GroundWave(9, 0, 30)), 0.05, 0.5, 0.2);
        return plan;
    }

    private static final KnownRate HEAT = new KnownRate() {
        @Override
        public double at(double timeS) {
            return HEAT_W;
        }

        @Override
        public double nextJumpS(double timeS) {
            return Double.POSITIVE_INFINITY;
        }
    };

    @ParameterizedTest
    @MethodSource("engines")
    void aSteadyShedStandsWhereItsGainsMeetItsLosses(Engine engine) {
        // a tenth of the capacity: steady after weeks
        Design design = tank().build().with("adjust.capacity", 0.1);
        int hours = 60 * 24;
        TankRun run = new Runner(InventedWeather.steady(5, hours), engine)
                .start(design, 0, 60, Supplied.BY_DESIGN.withBackupHeat(HEAT), Guest.NONE);
        int shelter =
                run.tank().network().nodes().stream().map(Node::name).toList().indexOf(ShelterPart.NODE);
        double[] found = new double[2];
        run.over(new Hours(0, hours), hour -> {
            found[0] = hour.state().nodeC(shelter);
            found[1] = hour.state().nodeC(0);
            return true;
        });
        double cover = 30 * 2.5;
        double air = 1200 * 20.0 / 3600;
        double ground = 10 / 0.5;
        double expectedC = ((cover + air) * 5 + ground * 9 + HEAT_W) / (cover + air + ground);
        assertEquals(7.75, expectedC, 0.005);
        assertEquals(expectedC, found[0], 0.01);
        double ua = Conductances.of(new TankPlan().quiet().indoors(10).build(), 0, 10)
                .totalWPerK();
        assertEquals(HEAT_W / ua, found[1] - found[0], 0.005 * HEAT_W / ua);
    }
}
