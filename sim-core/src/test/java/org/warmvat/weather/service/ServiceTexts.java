package org.warmvat.weather.service;

import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import org.warmvat.sun.Observer;
import org.warmvat.sun.SunHour;
import org.warmvat.sun.SunTrack;
import org.warmvat.weather.Humidity;
import org.warmvat.weather.Site;
import org.warmvat.weather.Weather;

/** Writes a year of invented weather in the shapes of public services; the numbers are none of theirs. */
public final class ServiceTexts {
    private static final int[] MONTHS_OF_YEARS = {1995, 1983, 1992, 2004, 1988, 1979, 2001, 1990, 1999, 1986, 1994, 2000
    };

    private final Weather weather;
    private final Site site;
    private final Observer observer;

    /** Of a year that begins on 1 January. */
    public ServiceTexts(Weather weather) {
        this.weather = weather;
        this.site = weather.site();
        this.observer = new Observer(
                site.latitudeDeg(), site.longitudeDeg(), site.elevationM(), site.standardPressureHPa(), 10);
    }

    private static String form(String form, Object... values) {
        return String.format(Locale.ROOT, form, values);
    }

    private double airAt(LocalDateTime local) {
        return weather.airC().at(seconds(local));
    }

    private double dewAt(LocalDateTime local) {
        return weather.dewPointC().at(seconds(local));
    }

    private double windAt(LocalDateTime local) {
        return weather.windMPerS().at(seconds(local));
    }

    private double seconds(LocalDateTime local) {
        return java.time.Duration.between(weather.start(), local).toSeconds();
    }

    private int hour(LocalDateTime local) {
        return Math.floorMod((int) Math.floor(seconds(local) / 3600), weather.hours());
    }

    /** Global, beam and diffuse irradiance of an instant: its hour's share of the light outside the air. */
    private double[] light(LocalDateTime local) {
        SunHour mean = weather.sun(hour(local));
        SunHour now = SunTrack.over(observer, local.minusMinutes(30), site.utcOffsetH(), 1)[0];
        if (mean.sunlitFraction() == 0 || now.sunlitFraction() < 1) {
            return new double[3];
        }
        double level = now.cosZenith() / (mean.cosZenith() * mean.sunlitFraction());
        int hour = hour(local);
        return new double[] {
            weather.globalWPerM2(hour) * level,
            weather.beamWPerM2(hour) / mean.sunlitFraction(),
            weather.diffuseWPerM2(hour) * level
        };
    }

    private LocalDateTime universal(LocalDateTime local) {
        return local.minusMinutes(Math.round(60 * site.utcOffsetH()));
    }

    private LocalDateTime inItsYear(LocalDateTime time) {
        return time.withYear(MONTHS_OF_YEARS[time.getMonthValue() - 1]);
    }

    /** The typical year of PVGIS; a later hour of the last day of universal time is that of the first. */
    public String pvgisTypicalYear() {
        return pvgisTypicalYear(0.1761);
    }

    /** The same with irradiance of an instant so many hours after the time. */
    public String pvgisTypicalYear(double offsetH) {
        StringBuilder text = new StringBuilder(
                form("""
                Latitude (decimal degrees): %.3f
                Longitude (decimal degrees): %.3f
                Elevation (m): %.1f
                Irradiance Time Offset (h): %.4f
                month,year
                1,1995
                12,2000
                time(UTC),T2m,RH,G(h),Gb(n),Gd(h),IR(h),WS10m,WD10m,SP
                """.replace("\n", "\r\n"), site.latitudeDeg(), site.longitudeDeg(), site.elevationM(), offsetH));
        for (int i = 0; i < weather.hours(); i++) {
            LocalDateTime utc = LocalDateTime.of(2025, 1, 1, 0, 0).plusHours(i);
            LocalDateTime local = wrapped(utc.plusMinutes(Math.round(60 * site.utcOffsetH())));
            double[] light = light(local.plusSeconds(Math.round(3600 * offsetH)));
            double humidity = 100 * Humidity.relativeHumidityFraction(airAt(local), dewAt(local));
            text.append(inItsYear(utc).format(DateTimeFormatter.ofPattern("yyyyMMdd:HHmm", Locale.ROOT)))
                    .append(form(
                            ",%.2f,%.2f,%.1f,%.2f,%.1f,%.2f,%.2f,%.1f,%.1f\r\n",
                            airAt(local),
                            Math.min(100, humidity),
                            light[0],
                            light[1] == 0 ? -0.0 : light[1],
                            light[2],
                            300 + airAt(local),
                            windAt(local),
                            180.0,
                            100 * weather.pressureHPa(hour(local))));
        }
        return text
                + "\r\nT2m: 2-m air temperature (degree Celsius)\r\nRH: relative humidity (%)\r\n\r\nPVGIS (c) European Union\r\n";
    }

    private LocalDateTime wrapped(LocalDateTime local) {
        return local.withYear(2025);
    }

    /** The hourly series of PVGIS for a plane, minutes after the full hour. */
    public String pvgisHourly(int slope, boolean parts) {
        StringBuilder text = new StringBuilder(form(
                "Latitude (decimal degrees):\t%.3f\r\nLongitude (decimal degrees):\t%.3f\r\nElevation (m):\t%.0f\r\n"
                        + "Radiation database:\tinvented\r\n\r\nSlope: %d deg. \r\nAzimuth: 0 deg. \r\n"
                        + (parts
                                ? "time,Gb(i),Gd(i),Gr(i),H_sun,T2m,WS10m,Int\r\n"
                                : "time,G(i),H_sun,T2m,WS10m,Int\r\n"),
                site.latitudeDeg(),
                site.longitudeDeg(),
                site.elevationM(),
                slope));
        LocalDateTime last = weather.end();
        for (LocalDateTime local = weather.start().plusMinutes(11); local.isBefore(last); local = local.plusHours(1)) {
            double[] light = light(local);
            String irradiance = parts ? form("%.2f,%.2f,0.0", light[0] - light[2], light[2]) : form("%.2f", light[0]);
            text.append(universal(local).format(DateTimeFormatter.ofPattern("yyyyMMdd:HHmm", Locale.ROOT)))
                    .append(form(",%s,0.0,%.2f,%.2f,0.0\r\n", irradiance, airAt(local), windAt(local)));
        }
        return text + "\r\nG(i): Global irradiance on the inclined plane (W/m2)\r\n\r\nPVGIS (c) European Union\r\n";
    }

    /** NSRDB: two lines of the site, empty cells at the end of every row. */
    public String nsrdb(int stepMinutes, int days) {
        StringBuilder text = new StringBuilder(form(
                """
                Source,Location ID,City,State,Country,Latitude,Longitude,Time Zone,Elevation,Local Time Zone,DHI Units,Version
                NSRDB,1,-,-,-,%.2f,%.2f,%.0f,%.0f,%.0f,w/m2,0
                Year,Month,Day,Hour,Minute,DHI,GHI,DNI,Dew Point,Relative Humidity,Temperature,Pressure,Wind Speed,,
                """, site.latitudeDeg(), site.longitudeDeg(), site.utcOffsetH(), site.elevationM(), site.utcOffsetH()));
        LocalDateTime end = weather.start().plusDays(days);
        for (LocalDateTime t = weather.start(); t.isBefore(end); t = t.plusMinutes(stepMinutes)) {
            double[] light = light(t);
            text.append(form(
                    "%d,%d,%d,%d,%d,%.0f,%.0f,%.0f,%.1f,80,%.1f,%.0f,%.1f,,\n",
                    t.getYear(),
                    t.getMonthValue(),
                    t.getDayOfMonth(),
                    t.getHour(),
                    t.getMinute(),
                    light[2],
                    light[0],
                    light[1],
                    dewAt(t),
                    airAt(t),
                    weather.pressureHPa(hour(t)),
                    windAt(t)));
        }
        return text.toString();
    }

    /** NASA POWER, in its bands of longitude or in universal time. */
    public String nasaPower(boolean universal) {
        StringBuilder text = new StringBuilder(
                form("""
                -BEGIN HEADER-
                NASA/POWER Source Native Resolution Hourly Data\s
                Dates (month/day/year): 01/01/2025 through 12/31/2025 in %s
                Location: latitude  %.2f   longitude %.2f\s
                elevation from MERRA-2: Average for 0.5 x 0.625 degree lat/lon region = %.2f meters
                The value for missing source data that cannot be computed or is outside of the sources availability range: -999\s
                parameter(s):\s
                T2M     MERRA-2 Temperature at 2 Meters (C)\s
                -END HEADER-
                YEAR,MO,DY,HR,T2M,T2MDEW,WS10M,PS,ALLSKY_SFC_SW_DWN,ALLSKY_SFC_SW_DNI,ALLSKY_SFC_SW_DIFF
                """, universal ? "UTC" : "LST", site.latitudeDeg(), site.longitudeDeg(), site.elevationM()));
        for (int hour = 0; hour < weather.hours(); hour++) {
            LocalDateTime local = weather.start().plusHours(hour);
            LocalDateTime t = universal ? universal(local) : local;
            text.append(form(
                    "%d,%d,%d,%d,%.2f,%s,%.2f,%.2f,%.2f,%.2f,%.2f\n",
                    t.getYear(),
                    t.getMonthValue(),
                    t.getDayOfMonth(),
                    t.getHour(),
                    airAt(local),
                    hour == 40 ? "-999" : form("%.2f", dewAt(local)),
                    windAt(local),
                    weather.pressureHPa(hour) / 10,
                    weather.globalWPerM2(hour),
                    weather.beamWPerM2(hour),
                    weather.diffuseWPerM2(hour)));
        }
        return text.toString();
    }

    /** TMY3 as published, or as a spreadsheet saves it. */
    public String tmy3(boolean saved) {
        StringBuilder text = new StringBuilder(form(
                "999001,%s,ZZ,%.1f,%.3f,%.3f,%.0f%s\n",
                quoted("INVENTED", !saved),
                site.utcOffsetH(),
                site.latitudeDeg(),
                site.longitudeDeg(),
                site.elevationM(),
                saved ? ",,,,,,," : ""));
        text.append("Date (MM/DD/YYYY),Time (HH:MM),GHI (W/m^2),DNI (W/m^2),DHI (W/m^2),TotCld (tenths),Dry-bulb (C),")
                .append(saved ? "Dew-point (C)  ,RHum (%) ," : "Dew-point (C),RHum (%),")
                .append("Pressure (mbar),Wspd (m/s)\n");
        for (int hour = 0; hour < weather.hours(); hour++) {
            LocalDateTime begin = inItsYear(weather.start().plusHours(hour));
            LocalDateTime end = weather.start().plusHours(hour + 1L);
            String date = saved
                    ? form("%d/%d/%d", begin.getMonthValue(), begin.getDayOfMonth(), begin.getYear())
                    : form("%02d/%02d/%d", begin.getMonthValue(), begin.getDayOfMonth(), begin.getYear());
            int label = begin.getHour() + 1;
            String time = saved ? (label == 24 ? "24:00:00" : label + ":00") : form("%02d:00", label);
            text.append(form(
                    "%s,%s,%.0f,%.0f,%.0f,5,%.1f,%.1f,80,%.0f,%.1f%s\n",
                    date,
                    time,
                    weather.globalWPerM2(hour),
                    weather.beamWPerM2(hour),
                    weather.diffuseWPerM2(hour),
                    airAt(end),
                    dewAt(end),
                    weather.pressureHPa(hour),
                    windAt(end),
                    saved ? ",277.1" : ""));
        }
        return text.toString();
    }

    private static String quoted(String text, boolean quotes) {
        return quotes ? '"' + text + '"' : text;
    }

    /** TMY2: fixed positions. */
    public String tmy2() {
        double latitude = Math.abs(site.latitudeDeg());
        double longitude = Math.abs(site.longitudeDeg());
        StringBuilder text = new StringBuilder(form(
                " 99001 %-22s %s %3.0f %s %2d %2d %s %3d %2d %5.0f\n",
                "INVENTED_PLACE",
                "ZZ",
                site.utcOffsetH(),
                site.latitudeDeg() < 0 ? "S" : "N",
                (int) latitude,
                Math.round(60 * (latitude - (int) latitude)),
                site.longitudeDeg() < 0 ? "W" : "E",
                (int) longitude,
                Math.round(60 * (longitude - (int) longitude)),
                site.elevationM()));
        for (int hour = 0; hour < weather.hours(); hour++) {
            LocalDateTime begin = weather.start().plusHours(hour);
            LocalDateTime end = begin.plusHours(1);
            text.append(form(
                    " %02d%02d%02d%02d%04d%04d%04d?0%04d?0%04d?0%04d?0%04d?0%04d?0%04d?0%02dA7%02dA7%4.0fA7%4.0fA7%3dA7%4.0fA7%03dA7%3.0fA7%04d?0%05dA7%010d%03dE8%03dF8%03dA7%02dE8\n",
                    MONTHS_OF_YEARS[begin.getMonthValue() - 1] % 100,
                    begin.getMonthValue(),
                    begin.getDayOfMonth(),
                    begin.getHour() + 1,
                    0,
                    0,
                    Math.round(weather.globalWPerM2(hour)),
                    Math.round(weather.beamWPerM2(hour)),
                    Math.round(weather.diffuseWPerM2(hour)),
                    0,
                    0,
                    0,
                    0,
                    5,
                    5,
                    10 * airAt(end),
                    10 * dewAt(end),
                    80,
                    weather.pressureHPa(hour),
                    0,
                    10 * windAt(end),
                    240,
                    77777,
                    9,
                    10,
                    50,
                    0,
                    0));
        }
        return text.toString();
    }
}
