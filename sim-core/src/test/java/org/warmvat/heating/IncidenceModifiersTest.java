package org.warmvat.heating;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.warmvat.design.heating.BeamModifier;
import org.warmvat.design.heating.Collector;
import org.warmvat.sun.Plane;
import org.warmvat.sun.SunHour;
import org.warmvat.sun.TiltedIrradiance;

/** Exact: limits and projections of the incidence modifiers (equations 5.1 and 13.3). */
class IncidenceModifiersTest {

    private static final Plane SLOPE = new Plane(60, 180);

    private final IncidenceModifiers formula =
            new IncidenceModifiers(new Collector.Incidence(new BeamModifier.Formula(0.14, 85), OptionalDouble.of(0.9)));

    private static IncidenceModifiers computed(BeamModifier beam) {
        BeamModifier.Stated stated = beam instanceof BeamModifier.InTable table
                ? new BeamModifier.Tabled(table)
                : (BeamModifier.Formula) beam;
        double fromBeam = -1;
        return new IncidenceModifiers(new Collector.Incidence(stated, OptionalDouble.of(fromBeam)));
    }

    private static BeamModifier.Biaxial tubes(BeamModifier.Tubes tubes) {
        return new BeamModifier.Biaxial(
                List.of(0.0, 30.0, 60.0), List.of(1.0, 1.08, 1.37), List.of(1.0, 0.99, 0.88), tubes);
    }

    /** 1 - 0.14 (1/cos 60° - 1) = 0.86; the modifier that data sheets state at 50° is 0.9222. */
    @Test
    void theBeamsModifierFallsWithIncidence() {
        assertEquals(1, formula.beam(0));
        assertEquals(0.86, formula.beam(60), 1e-12);
        assertEquals(0.9222, formula.beam(50), 5e-5);
    }

    /** Past 85° nothing; before it never below nothing (1/cos 84.9° = 11.2 would give -0.43). */
    @Test
    void theModifierIsNeverNegativeAndEndsAtItsLimit() {
        assertEquals(0, formula.beam(84.9));
        assertEquals(0, formula.beam(85));
        assertEquals(0, formula.beam(120));
        assertEquals(1 - 0.14 * (1 / Math.cos(Math.toRadians(80)) - 1), formula.beam(80), 1e-12);
    }

    @Test
    void takenSunWeighsBeamAndDiffuse() {
        TiltedIrradiance light = new TiltedIrradiance(500, 120, 30, 60);
        assertEquals(0.86 * 500 + 0.9 * 150, formula.takenWPerM2(SLOPE, SunHour.DARK, light), 1e-12);
    }

    /** A table of ones that ends at 90° takes all of the sky; one that ends earlier runs down to 0 at 90°. */
    @Test
    void aConstantTableChangesNothing() {
        List<Double> ends = List.of(0.0, 90.0);
        IncidenceModifiers one = computed(new BeamModifier.Table(ends, List.of(1.0, 1.0)));
        assertEquals(1, one.diffuse(), 1e-14);
        assertEquals(1, one.beam(89.999), 1e-14);
        assertEquals(0, one.beam(90));
        IncidenceModifiers short60 = computed(new BeamModifier.Table(List.of(0.0, 60.0), List.of(1.0, 0.9)));
        assertEquals(0.45, short60.beam(75), 1e-12);
        IncidenceModifiers two = computed(
                new BeamModifier.Biaxial(ends, List.of(1.0, 1.0), List.of(1.0, 1.0), BeamModifier.Tubes.ALONG_SLOPE));
        assertEquals(1, two.diffuse(), 1e-14);
    }

    /** Over the whole hemisphere the formula's mean is 1 - b0 while it stays above 0, which b0 = 0 does up to 85°: sin² 85°. */
    @Test
    void theFormulasMeanOverTheSky() {
        assertEquals(0.9924, computed(new BeamModifier.Formula(0, 85)).diffuse(), 1e-4);
        double least = Math.acos(0.14 / 1.14);
        double exact = 1.14 * Math.pow(Math.sin(least), 2) - 2 * 0.14 * (1 - Math.cos(least));
        assertEquals(exact, computed(new BeamModifier.Formula(0.14, 85)).diffuse(), 1e-4);
    }

    /** Noon: the sun is straight up the slope from the normal, so that only the angle along tubes up the slope counts. */
    @Test
    void tubesUpTheSlopeTurnTheirLengthToANoonSun() {
        SunHour noon = new SunHour(1, 75, 180, 1361);
        double incidenceDeg = 15;
        assertEquals(1 - 0.01 * incidenceDeg / 30, at(BeamModifier.Tubes.ALONG_SLOPE, noon), 1e-9);
        assertEquals(1 + 0.08 * incidenceDeg / 30, at(BeamModifier.Tubes.ACROSS_SLOPE, noon), 1e-9);
    }

    /** Both angles by hand: s·t = sin 60 sin 40, s·l = cos 60 sin 60 - sin 60 cos 60 cos 40, s·n = cos 60 cos 60 + sin² 60 cos 40. */
    @Test
    void aSlantingSunCountsByBothAngles() {
        SunHour slanting = new SunHour(1, 60, 220, 1361);
        double transverseDeg = Math.toDegrees(Math.atan(0.556670399 / 0.824533332));
        double longitudinalDeg = Math.toDegrees(Math.atan(0.101307406 / 0.824533332));
        double expected = (1.08 + (1.37 - 1.08) * (transverseDeg - 30) / 30) * (1 - 0.01 * longitudinalDeg / 30);
        assertEquals(expected, at(BeamModifier.Tubes.ALONG_SLOPE, slanting), 1e-7);
        assertEquals(0, at(BeamModifier.Tubes.ALONG_SLOPE, new SunHour(1, 60, 0, 1361)));
    }

    private static double at(BeamModifier.Tubes lie, SunHour sun) {
        IncidenceModifiers two = new IncidenceModifiers(
                new Collector.Incidence(new BeamModifier.Tabled(tubes(lie)), OptionalDouble.of(1)));
        return two.beam(SLOPE, sun, Math.toDegrees(Math.acos(SLOPE.cosIncidence(sun))));
    }
}
