package org.warmvat.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.warmvat.sun.Horizon;
import org.warmvat.sun.Observer;
import org.warmvat.sun.SunTrack;

/**
 * Published: a typical year at 45 N 8 E that a public service gives with and without a stated horizon. Sky view computed from the
 * eight stated heights as the mean of cos² h. The two files themselves are only read where -Dreal.weather names a folder that has
 * them: shares of the beam on the horizontal that the horizon leaves, month by month. Tolerances: 0.025 of a month (463 partly
 * shaded hours are sampled at an instant there and over an hour here), 0.003 of the year.
 */
class HorizonServicePairTest implements Published {

    private static final double[] HEIGHTS_DEG = {0, 10, 20, 30, 40, 15, 25, 5};
    private static final double[] BEAM_LEFT = {
        0.0000, 0.3022, 0.8571, 0.9183, 0.9528, 0.9780, 0.9641, 0.9316, 0.8964, 0.5154, 0.1160, 0.0000
    };
    private static final double YEAR_LEFT = 0.7868;
    /** An instant's irradiance stands this long after the stamp. */
    private static final int INSTANT_AFTER_STAMP_S = 634;

    private static Horizon horizon() {
        List<Horizon.Point> points = new ArrayList<>();
        for (int i = 0; i < HEIGHTS_DEG.length; i++) {
            points.add(new Horizon.Point(45 * i, HEIGHTS_DEG[i]));
        }
        return new Horizon(points);
    }

    @Override
    public Source source() {
        return new Source(
                Topic.SUN,
                "PVGIS",
                "PVGIS, (c) European Union: typical year at 45 N 8 E with a user horizon.",
                "Eight heights of the horizon, straight lines between.",
                "2e-5: sectors of one degree here.");
    }

    @Override
    public void fill(Sheet sheet) {
        sheet.table(Provenance.DERIVED)
                .value("sky view of a level plane", 0.87390, horizon().lidSkyFactor(), 2e-5);
    }

    @Test
    void theBeamThatTheServicesHorizonLeaves() throws IOException {
        Path folder = Path.of(System.getProperty("real.weather", "")).resolve("services");
        Path open = folder.resolve("pvgis_tmy_45n_8e.csv");
        Assumptions.assumeTrue(Files.isRegularFile(open), "no services/pvgis_tmy_45n_8e.csv in -Dreal.weather");
        List<String> rows = Files.readAllLines(open).stream()
                .filter(line -> line.matches("\\d{8}:\\d{4},.*"))
                .toList();
        double[] left = new double[13];
        double[] all = new double[13];
        for (int i = 0; i < rows.size(); ) {
            i = month(rows, i, left, all);
        }
        for (int month = 0; month < 12; month++) {
            assertEquals(BEAM_LEFT[month], left[month] / all[month], 0.025, "month " + (month + 1));
        }
        assertEquals(YEAR_LEFT, left[12] / all[12], 0.003, "year");
        assertTrue(rows.size() == 8760);
    }

    /** Sums a month, which has its own year, and returns where the next begins. */
    private static int month(List<String> rows, int first, double[] left, double[] all) {
        int month = Integer.parseInt(rows.get(first).substring(4, 6));
        int end = first;
        while (end < rows.size() && Integer.parseInt(rows.get(end).substring(4, 6)) == month) {
            end++;
        }
        String stamp = rows.get(first);
        LocalDateTime start = LocalDateTime.of(Integer.parseInt(stamp.substring(0, 4)), month, 1, 0, 0)
                .plusSeconds(INSTANT_AFTER_STAMP_S - 1800);
        Observer observer = new Observer(45, 8, 250, 983, 10);
        double[] shares = SunTrack.sharesAbove(observer, start, 0, end - first, horizon());
        var sun = SunTrack.over(observer, start, 0, end - first);
        for (int i = 0; i < shares.length; i++) {
            double beam = Double.parseDouble(rows.get(first + i).split(",")[4]) * sun[i].cosZenith();
            for (int period : new int[] {month - 1, 12}) {
                left[period] += shares[i] * beam;
                all[period] += beam;
            }
        }
        return end;
    }
}
