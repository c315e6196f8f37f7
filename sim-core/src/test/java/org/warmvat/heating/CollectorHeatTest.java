package org.warmvat.heating;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.warmvat.design.heating.BeamModifier;
import org.warmvat.design.heating.Collector;
import org.warmvat.design.heating.Mounting;
import org.warmvat.design.heating.WindAndSkyLoss;
import org.warmvat.design.keys.Reader;
import org.warmvat.design.surroundings.Shading;
import org.warmvat.sun.SkyModel;

/** What the collector loses (equation 5.1). */
class CollectorHeatTest {
    private final CollectorHeat heat = new CollectorHeat(new Collector(
            2,
            new Mounting(60, OptionalDouble.empty(), SkyModel.ISOTROPIC),
            0.78,
            3.6,
            0.012,
            7000,
            new Collector.Incidence(new BeamModifier.Formula(0.14, 85), OptionalDouble.of(0.9)),
            Reader.usual(WindAndSkyLoss.class),
            new Shading.Own(Optional.empty(), Optional.empty())));

    @Test
    void lossesAreThoseOfTheWholeArea() {
        assertEquals(2 * 0.012, heat.quadraticWPerK2(), 1e-12);
        assertEquals(7.2, heat.linearWPerK(), 1e-12);
    }
}
