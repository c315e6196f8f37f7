package org.warmvat.weather;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** The quantities of a table, with what equation 4.1 assumes for absent columns; tells of each assumption. */
final class Assumed {
    private static final double WIND_M_PER_S = 3;
    private static final double RELATIVE_HUMIDITY_FRACTION = 0.75;
    private static final double CLOUD_FRACTION = 0.5;

    private final HourlyTable table;
    private final List<String> told;

    Assumed(HourlyTable table, List<String> told) {
        this.table = table;
        this.told = told;
    }

    double[] airC() {
        return table.columns().get(Quantity.AIR);
    }

    double[] dewPointC() {
        double[] dew = table.columns().get(Quantity.DEW_POINT);
        if (dew != null) {
            return dew;
        }
        double[] humidity = table.columns().get(Quantity.RELATIVE_HUMIDITY);
        if (humidity == null) {
            told.add("The weather file has no humidity: a relative humidity of 0.75 was assumed.");
            humidity = constant(RELATIVE_HUMIDITY_FRACTION);
        }
        double[] air = airC();
        double[] result = new double[air.length];
        for (int i = 0; i < result.length; i++) {
            result[i] = Humidity.dewPointC(air[i], humidity[i]);
        }
        return result;
    }

    double[] windMPerS() {
        double[] wind = table.columns().get(Quantity.WIND);
        if (wind == null) {
            told.add("The weather file has no wind: 3 m/s at 10 m was assumed.");
            return constant(WIND_M_PER_S);
        }
        return wind;
    }

    double[] pressureHPa() {
        double[] pressure = table.columns().get(Quantity.PRESSURE);
        if (pressure == null) {
            double standard = table.site().standardPressureHPa();
            told.add(String.format(
                    Locale.ROOT,
                    "The weather file has no air pressure: the standard atmosphere at %.0f m, %.0f hPa, was assumed.",
                    table.site().elevationM(),
                    standard));
            return constant(standard);
        }
        return pressure;
    }

    SkySeries sky(double[] dewPointC, double[] pressureHPa) {
        double[] longwave = table.columns().get(Quantity.LONGWAVE);
        if (longwave != null) {
            return new SkySeries.Stepped(
                    Arrays.stream(longwave).map(SkyTemperature::ofLongwaveC).toArray());
        }
        double[] cloud = table.columns().get(Quantity.CLOUD);
        if (cloud == null) {
            told.add("The weather file has neither long-wave irradiance nor cloud: a cloud fraction of 0.5 was assumed"
                    + " for the sky temperature.");
            cloud = constant(CLOUD_FRACTION);
        }
        double firstHour = table.start().toLocalTime().toSecondOfDay() / 3600.0
                + table.stamp().secondsIntoHour() / 3600;
        double[] air = airC();
        double[] result = new double[air.length];
        for (int i = 0; i < result.length; i++) {
            double clear = SkyTemperature.clearEmissivity(dewPointC[i], (firstHour + i) % 24, pressureHPa[i]);
            result[i] = SkyTemperature.ofEmissivityC(SkyTemperature.cloudyEmissivity(clear, cloud[i]), air[i]);
        }
        return new SkySeries.Sloped(new Linear(table.stamp().secondsIntoHour(), result));
    }

    void tellOfSunlight() {
        boolean global = table.columns().containsKey(Quantity.GLOBAL);
        boolean beam = table.columns().containsKey(Quantity.BEAM);
        boolean diffuse = table.columns().containsKey(Quantity.DIFFUSE);
        if (global && !beam && !diffuse) {
            told.add(
                    "The weather file has only global irradiance: it was split into beam and diffuse by Erbs, Klein and"
                            + " Duffie (1982).");
        } else if (!global || !beam || !diffuse) {
            String missing = !global ? "global" : !beam ? "beam" : "diffuse";
            told.add("The weather file has no " + missing + " irradiance: it was closed from the other two.");
        }
    }

    private double[] constant(double value) {
        double[] result = new double[table.hours()];
        Arrays.fill(result, value);
        return result;
    }
}
