package org.warmvat.checks;

import java.util.Optional;
import java.util.OptionalDouble;
import org.warmvat.design.heating.BeamModifier;
import org.warmvat.design.heating.Collector;
import org.warmvat.design.heating.Mounting;
import org.warmvat.design.heating.WindAndSkyLoss;
import org.warmvat.design.keys.Reader;
import org.warmvat.design.surroundings.Shading;
import org.warmvat.heating.CollectorHeat;
import org.warmvat.heating.IncidenceModifiers;
import org.warmvat.sun.SkyModel;
import org.warmvat.sun.TiltedIrradiance;

/** Collectors of one square metre, by their data sheets. */
final class Collectors {

    private static final Mounting PLANE = new Mounting(45, OptionalDouble.empty(), SkyModel.ISOTROPIC);

    private Collectors() {}

    /** A collector of which only the incidence modifier matters. */
    static Collector withB0(double b0) {
        return new Collector(
                1,
                PLANE,
                0.8,
                3,
                0.01,
                7000,
                new Collector.Incidence(new BeamModifier.Formula(b0, 85), OptionalDouble.of(0.9)),
                Reader.usual(WindAndSkyLoss.class),
                new Shading.Own(Optional.empty(), Optional.empty()));
    }

    /** Coefficients of a data sheet. */
    record Coefficients(double eta0, double a1, double a2, double kd) {

        /** What it gives in light at right angles, so many kelvin above the air, W/m2. */
        double outputWPerM2(TiltedIrradiance light, double aboveAirK) {
            Collector collector = new Collector(
                    1,
                    PLANE,
                    eta0,
                    a1,
                    a2,
                    7000,
                    new Collector.Incidence(new BeamModifier.Formula(0.1, 85), OptionalDouble.of(kd)),
                    Reader.usual(WindAndSkyLoss.class),
                    new Shading.Own(Optional.empty(), Optional.empty()));
            CollectorHeat heat = new CollectorHeat(collector);
            IncidenceModifiers modifiers = new IncidenceModifiers(collector.incidence());
            double takenWPerM2 = modifiers.beam(light.incidenceDeg()) * light.beamWPerM2()
                    + modifiers.diffuse() * (light.skyDiffuseWPerM2() + light.groundWPerM2());
            return eta0 * takenWPerM2
                    - heat.linearWPerK() * aboveAirK
                    - heat.quadraticWPerK2() * aboveAirK * Math.abs(aboveAirK);
        }
    }
}
