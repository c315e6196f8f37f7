package org.warmvat.checks;

import org.warmvat.gas.GasVapour;

/**
 * Published: Y. A. Cengel, Heat and Mass Transfer, table A-9, saturated water. Seen (a scan). Tolerance: 0.5 % in pressure,
 * the stated uncertainty of the program's Magnus formula; 0.04 % in latent heat, the spread of a straight
 * line.
 */
class VapourCengelA9Test implements Published {

    @Override
    public Source source() {
        return new Source(
                Topic.GAS,
                "Cengel",
                "Y. A. Cengel, Heat and Mass Transfer, table A-9",
                "Saturation pressure by Magnus (WMO No. 8), latent heat as a straight line.",
                "0.5 % in pressure: the stated uncertainty of the Magnus formula; 0.04 % in latent heat: a straight line"
                        + " against a curve.");
    }

    @Override
    public void fill(Sheet sheet) {
        Sheet.Table table = sheet.table(Provenance.SEEN);
        table.value("saturation pressure at 35 °C, kPa", 5.628, kPa(35), 0.028)
                .value("saturation pressure at 40 °C, kPa", 7.384, kPa(40), 0.037)
                .value("saturation pressure at 55 °C, kPa", 15.76, kPa(55), 0.079)
                .value("latent heat at 35 °C, kJ/kg", 2419, latent(35), 1)
                .value("latent heat at 55 °C, kJ/kg", 2371, latent(55), 1);
        double[][] more = {{10, 1.2276}, {15, 1.7051}, {20, 2.339}, {25, 3.169}, {30, 4.245}, {45, 9.593}, {50, 12.35}};
        for (double[] row : more) {
            table.value("saturation pressure at " + (int) row[0] + " °C, kPa", row[1], kPa(row[0]), 0.005 * row[1]);
        }
        double[][] latent = {{20, 2454}, {25, 2442}, {30, 2431}, {40, 2407}, {45, 2395}, {50, 2383}, {60, 2359}};
        for (double[] row : latent) {
            table.value("latent heat at " + (int) row[0] + " °C, kJ/kg", row[1], latent(row[0]), 1);
        }
    }

    private static double kPa(double celsius) {
        return GasVapour.saturationPa(celsius) / 1000;
    }

    private static double latent(double celsius) {
        return GasVapour.latentHeatJPerKg(celsius) / 1000;
    }
}
