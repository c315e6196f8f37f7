package org.warmvat.weather;

import java.util.Arrays;
import org.warmvat.sun.Irradiance;
import org.warmvat.sun.Observer;
import org.warmvat.sun.SunHour;
import org.warmvat.sun.SunTrack;

/** The sun and the three irradiances of every hour (model equations 4.2 and 4.3). */
record Sunlight(SunHour[] sun, Irradiance[] light) {
    static Sunlight of(HourlyTable table, double meanPressureHPa, Conventions conventions) {
        Observer observer = observer(table, meanPressureHPa, conventions);
        return under(SunTrack.over(observer, table.start(), table.site().utcOffsetH(), table.hours()), table);
    }

    /** Other irradiances of the same hours under the same sun. */
    static Sunlight under(Sunlight known, HourlyTable table) {
        return under(known.sun, table);
    }

    private static Sunlight under(SunHour[] sun, HourlyTable table) {
        double[] global = table.columns().get(Quantity.GLOBAL);
        double[] beam = table.columns().get(Quantity.BEAM);
        double[] diffuse = table.columns().get(Quantity.DIFFUSE);
        Irradiance[] light = new Irradiance[sun.length];
        Arrays.setAll(light, i -> light(at(global, i), at(beam, i), at(diffuse, i), sun[i]));
        return new Sunlight(sun, light);
    }

    /** From where the sun is seen. */
    static Observer observer(HourlyTable table, double meanPressureHPa, Conventions conventions) {
        Site site = table.site();
        return new Observer(
                site.latitudeDeg(),
                site.longitudeDeg(),
                site.elevationM(),
                meanPressureHPa,
                conventions.refractionAirC(),
                conventions.leastBeamElevationDeg());
    }

    /** Value of a column that may be absent, small negative readings as 0. */
    private static Known at(double[] column, int i) {
        return column == null ? new Known(false, 0) : new Known(true, Math.max(0, column[i]));
    }

    private static Irradiance light(Known global, Known beam, Known diffuse, SunHour sun) {
        if (!global.known) {
            return Irradiance.ofBeamAndDiffuse(beam.value, diffuse.value, sun);
        }
        if (beam.known && diffuse.known) {
            return global.value + beam.value + diffuse.value == 0
                    ? Irradiance.NONE
                    : new Irradiance(global.value, beam.value, diffuse.value);
        }
        if (diffuse.known) {
            return Irradiance.ofGlobalAndDiffuse(global.value, diffuse.value, sun);
        }
        return beam.known
                ? Irradiance.ofGlobalAndBeam(global.value, beam.value, sun)
                : Irradiance.ofGlobal(global.value, sun);
    }

    private record Known(boolean known, double value) {}
}
