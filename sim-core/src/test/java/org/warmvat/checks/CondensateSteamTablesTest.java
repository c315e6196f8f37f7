package org.warmvat.checks;

import org.warmvat.gas.GasVapour;

/**
 * From published values: water in saturated gas at 37 and 5 °C by the steam tables, as kg per Nm3 of dry gas at 101.325 kPa, and
 * what falls out between 37 and 5 and between 35 and 10 °C. (A page that prints 84 % for the first subtracts the contents of two
 * different cubic metres.) Tolerance 0.5 %: the Magnus form against the tables.
 */
class CondensateSteamTablesTest implements Published {

    private static final double PRESSURE_PA = 101_325;
    private static final double OVER_PA = 2000;

    @Override
    public Source source() {
        return new Source(
                Topic.GAS,
                "Steam tables",
                "Saturation pressures of the steam tables (IAPWS-IF97).",
                "Saturated gas at 101.325 kPa, and with 2 kPa over.",
                "0.5 %: the Magnus form here.");
    }

    @Override
    public void fill(Sheet sheet) {
        Sheet.Table table = sheet.table(Provenance.DERIVED);
        value(table, "water at 37 °C, kg/Nm3", 0.05310, GasVapour.waterKgPerNm3(37, PRESSURE_PA));
        value(table, "water at 5 °C, kg/Nm3", 0.00698, GasVapour.waterKgPerNm3(5, PRESSURE_PA));
        value(table, "falls out from 37 to 5 °C, kg/Nm3", 0.0461, falls(37, 5, PRESSURE_PA));
        value(table, "the same, share", 0.869, falls(37, 5, PRESSURE_PA) / GasVapour.waterKgPerNm3(37, PRESSURE_PA));
        value(table, "falls out from 35 to 10 °C, kg/Nm3", 0.0374, falls(35, 10, PRESSURE_PA));
        value(table, "the same, share", 0.791, falls(35, 10, PRESSURE_PA) / GasVapour.waterKgPerNm3(35, PRESSURE_PA));
        value(table, "37 to 5 °C, 2 kPa over, kg/Nm3", 0.0452, falls(37, 5, PRESSURE_PA + OVER_PA));
        value(table, "35 to 10 °C, 2 kPa over, kg/Nm3", 0.0366, falls(35, 10, PRESSURE_PA + OVER_PA));
    }

    private static double falls(double fromC, double toC, double pressurePa) {
        return GasVapour.waterKgPerNm3(fromC, pressurePa) - GasVapour.waterKgPerNm3(toC, pressurePa);
    }

    private static void value(Sheet.Table table, String what, double published, double ours) {
        table.value(what, published, ours, 0.005 * published);
    }
}
