package org.warmvat.weather;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** The quantities of a table, with what equation 4.1 assumes for absent columns; tells of each assumption. */
final class Assumed {
    private final HourlyTable table;
    private final Conventions conventions;
    private final List<String> told;

    Assumed(HourlyTable table, Conventions conventions, List<String> told) {
        this.table = table;
        this.conventions = conventions;
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
        double[] humidity = relativeHumidity();
        double[] air = airC();
        double[] result = new double[air.length];
        Arrays.setAll(result, i -> Humidity.dewPointC(air[i], humidity[i]));
        return result;
    }

    private double[] relativeHumidity() {
        double[] humidity = table.columns().get(Quantity.RELATIVE_HUMIDITY);
        if (humidity != null) {
            return humidity;
        }
        double assumed = conventions.relativeHumidityFraction();
        told.add("The weather file has no humidity: a relative humidity of " + text(assumed) + " was assumed.");
        return constant(assumed);
    }

    double[] windMPerS() {
        double[] wind = table.columns().get(Quantity.WIND);
        if (wind == null) {
            double assumed = conventions.windMPerS();
            told.add("The weather file has no wind: " + text(assumed) + " m/s at 10 m was assumed.");
            return constant(assumed);
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
            double assumed = conventions.cloudFraction();
            told.add("The weather file has neither long-wave irradiance nor cloud: a cloud fraction of " + text(assumed)
                    + " was assumed for the sky temperature.");
            cloud = constant(assumed);
        }
        double firstHour = table.start().toLocalTime().toSecondOfDay() / 3600.0
                + table.stamp().secondsIntoHour() / 3600;
        double[] air = airC();
        double[] result = new double[air.length];
        for (int i = 0; i < result.length; i++) {
            double clear = SkyTemperature.clearEmissivity(dewPointC[i], (firstHour + i) % 24, pressureHPa[i]);
            result[i] = SkyTemperature.ofEmissivityC(
                    SkyTemperature.cloudyEmissivity(clear, cloud[i], conventions.cloudFactor()), air[i]);
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

    private static String text(double value) {
        return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
    }

    private double[] constant(double value) {
        double[] result = new double[table.hours()];
        Arrays.fill(result, value);
        return result;
    }
}
