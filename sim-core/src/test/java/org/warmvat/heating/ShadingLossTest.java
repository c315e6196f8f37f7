package org.warmvat.heating;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.warmvat.design.heating.BeamModifier;
import org.warmvat.design.heating.Collector;
import org.warmvat.design.heating.Mounting;
import org.warmvat.design.heating.WindAndSkyLoss;
import org.warmvat.design.keys.Reader;
import org.warmvat.design.surroundings.HorizonPoint;
import org.warmvat.design.surroundings.Shading;
import org.warmvat.sample.InventedWeather;
import org.warmvat.sun.SkyModel;
import org.warmvat.weather.Weather;

/** Exact: what a horizon and trees take, by limits. */
class ShadingLossTest {

    private static Collector collector() {
        return new Collector(
                2,
                new Mounting(60, OptionalDouble.of(180), SkyModel.ISOTROPIC),
                0.78,
                3.6,
                0.012,
                7000,
                new Collector.Incidence(new BeamModifier.Formula(0.14, 85), OptionalDouble.of(0.9)),
                Reader.usual(WindAndSkyLoss.class),
                new Shading.Own(Optional.empty(), Optional.empty()));
    }

    private static ShadingLoss loss(Shading shading, int firstDay) {
        Weather weather = InventedWeather.days(firstDay, 5);
        return ShadingLoss.of(weather, collector(), shading, 0.2);
    }

    @Test
    void nothingInTheWayTakesNothing() {
        assertEquals(0, loss(Shading.NONE, 90).lostShare(), 1e-15);
    }

    /** Trees of one month take all of its beam and half of its sky, and nothing of another month's. */
    @Test
    void treesTakeTheirMonthOnly() {
        List<Double> april = new java.util.ArrayList<>(Collections.nCopies(12, 0.0));
        april.set(3, 1.0);
        Shading trees = new Shading(List.of(), april);
        ShadingLoss loss = loss(trees, 90);
        assertTrue(loss.lostShare(4) > 0.5, "April: " + loss.lostShare(4));
        assertEquals(0, loss(trees, 40).lostShare(), 1e-15);
    }

    /** A hill to the south takes more of February, whose sun is low, than of June, of which it hides a strip of sky. */
    @Test
    void aHillTakesMoreOfTheLowSun() {
        Shading hill = new Shading(
                List.of(new HorizonPoint(90, 5), new HorizonPoint(185, 24), new HorizonPoint(280, 6)),
                Collections.nCopies(12, 0.0));
        double february = loss(hill, 35).lostShare();
        double june = loss(hill, 160).lostShare();
        assertTrue(february > 2 * june && june > 0.02, february + ", " + june);
    }
}
