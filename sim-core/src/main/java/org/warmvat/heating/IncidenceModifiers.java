package org.warmvat.heating;

import java.util.List;
import org.warmvat.design.heating.BeamModifier;
import org.warmvat.design.heating.Collector;
import org.warmvat.sun.Plane;
import org.warmvat.sun.SunHour;
import org.warmvat.sun.TiltedIrradiance;

/**
 * How much of the light on its plane a collector takes, by where the light comes from (equations 5.1 and 13.3; projection of the
 * angle of incidence onto two planes as in ISO 9806, annex). Immutable.
 */
public final class IncidenceModifiers {

    private static final int CELLS_UP = 90;
    private static final int CELLS_ROUND = 360;

    private final BeamModifier beam;
    private final double diffuse;

    /** The modifiers of a collector. */
    public IncidenceModifiers(Collector.Incidence incidence) {
        beam = incidence.beam();
        diffuse = incidence.kd().orElseGet(this::meanOverTheSky);
    }

    /** Modifier of diffuse light: as given, else the beam's averaged over the hemisphere. */
    public double diffuse() {
        return diffuse;
    }

    /** Modifier of the beam in an hour. */
    public double beam(Plane plane, SunHour sun, double incidenceDeg) {
        if (!(beam instanceof BeamModifier.Biaxial two)) {
            return beam(incidenceDeg);
        }
        double turn = Math.toRadians(sun.azimuthDeg() - plane.azimuthDeg());
        double tilt = Math.toRadians(plane.tiltDeg());
        double sideways = sun.sinZenith() * Math.sin(turn);
        double upSlope = sun.cosZenith() * Math.sin(tilt) - sun.sinZenith() * Math.cos(tilt) * Math.cos(turn);
        boolean along = two.tubes() == BeamModifier.Tubes.ALONG_SLOPE;
        return biaxial(two, along ? sideways : upSlope, along ? upSlope : sideways, plane.cosIncidence(sun));
    }

    /** Modifier of the beam at an angle of incidence, for a collector that is alike all round. */
    public double beam(double incidenceDeg) {
        if (beam instanceof BeamModifier.Formula formula) {
            return incidenceDeg >= formula.limitDeg()
                    ? 0
                    : Math.max(0, 1 - formula.b0() * (1 / Math.cos(Math.toRadians(incidenceDeg)) - 1));
        }
        BeamModifier.Table table = (BeamModifier.Table) beam;
        return straight(table.anglesDeg(), table.values(), incidenceDeg);
    }

    /** Sun absorbed of some light, over eta0, W/m2. */
    double takenWPerM2(Plane plane, SunHour sun, TiltedIrradiance light) {
        return beam(plane, sun, light.incidenceDeg()) * light.beamWPerM2()
                + diffuse * (light.skyDiffuseWPerM2() + light.groundWPerM2());
    }

    /** Product of both tables at a direction, by its cosines across and along the tubes and to the normal. */
    private static double biaxial(BeamModifier.Biaxial two, double across, double along, double normal) {
        if (normal <= 0) {
            return 0;
        }
        double transverseDeg = Math.toDegrees(Math.atan2(Math.abs(across), normal));
        double longitudinalDeg = Math.toDegrees(Math.atan2(Math.abs(along), normal));
        return straight(two.anglesDeg(), two.transverse(), transverseDeg)
                * straight(two.anglesDeg(), two.longitudinal(), longitudinalDeg);
    }

    /** Along straight lines; a table that ends before 90 degrees runs down to 0 there. */
    private static double straight(List<Double> anglesDeg, List<Double> values, double angleDeg) {
        if (angleDeg >= 90) {
            return 0;
        }
        int after = 1;
        while (after < anglesDeg.size() && anglesDeg.get(after) <= angleDeg) {
            after++;
        }
        double leftDeg = anglesDeg.get(after - 1);
        boolean beyond = after == anglesDeg.size();
        double rightDeg = beyond ? 90 : anglesDeg.get(after);
        double right = beyond ? 0 : values.get(after);
        double left = values.get(after - 1);
        return left + (right - left) * (angleDeg - leftDeg) / (rightDeg - leftDeg);
    }

    private double meanOverTheSky() {
        double taken = 0;
        double all = 0;
        for (int up = 0; up < CELLS_UP; up++) {
            double theta = Math.toRadians(up + 0.5);
            double weight = Math.cos(theta) * Math.sin(theta);
            for (int round = 0; round < CELLS_ROUND; round++) {
                taken += weight * towards(theta, Math.toRadians(round + 0.5));
                all += weight;
            }
        }
        return taken / all;
    }

    private double towards(double theta, double around) {
        return beam instanceof BeamModifier.Biaxial two
                ? biaxial(two, Math.sin(theta) * Math.cos(around), Math.sin(theta) * Math.sin(around), Math.cos(theta))
                : beam(Math.toDegrees(theta));
    }
}
