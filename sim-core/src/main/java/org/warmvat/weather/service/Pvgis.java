package org.warmvat.weather.service;

import java.util.Locale;
import java.util.Optional;
import org.warmvat.weather.layout.Layout;

/**
 * What the files of the Photovoltaic Geographical Information System of the European Commission's Joint Research Centre have in common,
 * by its pages "TMY generator" and "Hourly radiation": the site in lead-in lines, universal time, a blank line and the columns' meanings
 * after the rows.
 */
final class Pvgis {
    /** A spreadsheet may have given it a decimal comma, and commas after it. */
    private static final String NUMBER = "[\\s,;]*(-?[0-9]+(?:[.,][0-9]+)?)";

    private static final String LATITUDE = "^Latitude \\(decimal degrees\\):" + NUMBER;
    private static final String LONGITUDE = "^Longitude \\(decimal degrees\\):" + NUMBER;
    private static final String ELEVATION = "^Elevation \\(m\\):" + NUMBER;
    /** A spreadsheet fills it up with delimiters. */
    static final String BLANK_LINE = "^[\\s,;]*$";

    private Pvgis() {}

    static boolean isLike(TextHead head) {
        return head.line(0).startsWith("Latitude (decimal degrees):");
    }

    static Layout.Text text(int headingLine) {
        return new Layout.Text(headingLine, true, ',', '.', Optional.of(BLANK_LINE), false);
    }

    /** Local standard time is taken as the whole hour of the longitude, since the file tells universal time only. */
    static int utcOffsetH(TextHead head) {
        return (int) Math.round(head.number(LONGITUDE).orElse(0.0) / 15);
    }

    static Layout.SiteSource site(TextHead head) {
        return new Layout.SiteSource(
                Layout.Source.of(String.format(
                        Locale.ROOT,
                        "PVGIS %.3f, %.3f",
                        head.number(LATITUDE).orElse(0.0),
                        head.number(LONGITUDE).orElse(0.0))),
                Layout.Source.found(LATITUDE),
                Layout.Source.found(LONGITUDE),
                Layout.Source.found(ELEVATION),
                Layout.Source.of(Integer.toString(utcOffsetH(head))));
    }

    static String after(double minutes) {
        return String.format(Locale.ROOT, "%.1f min after the full hour", minutes);
    }

    static String times(String instant, TextHead head) {
        return String.format(
                Locale.ROOT,
                "times are universal, and local standard time was taken as UTC%+d h by the longitude; irradiance is that of an instant,"
                        + " %s, and each hour was given the same share of the light outside the air",
                utcOffsetH(head),
                instant);
    }
}
