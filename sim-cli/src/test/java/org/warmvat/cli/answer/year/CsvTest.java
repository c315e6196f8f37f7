package org.warmvat.cli.answer.year;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.warmvat.account.Period;
import org.warmvat.envelope.EnvelopePart;
import org.warmvat.gas.GasPart;
import org.warmvat.heating.SolarPart;
import org.warmvat.question.year.YearResult;
import org.warmvat.tank.Lines;

class CsvTest {

    private final YearResult usual = SyntheticRun.usual();

    @Test
    void hourlyHasThePromisedColumnsFirst() {
        String header = lines(usual, "hourly.csv").get(0);
        assertEquals(
                "time,slurry_c,collector_c,backup_circuit_c,air_c,solar_heat_w,backup_heat_w,loss_w,feed_w,mixer_electric_w,"
                        + "auger_electric_w,other_electric_w,methane_nm3_h,collector_irradiance_w_m2,sun_not_used_w",
                header);
    }

    @Test
    void aRowIsStampedAtTheEndOfItsHour() {
        List<String> lines = lines(usual, "hourly.csv");
        assertEquals(8761, lines.size());
        assertTrue(lines.get(1).startsWith("2025-01-01T01:00,"), lines.get(1));
        assertTrue(lines.get(31 * 24).startsWith("2025-02-01T00:00,"), lines.get(31 * 24));
        assertTrue(lines.get(8760).startsWith("2026-01-01T00:00,"), lines.get(8760));
    }

    @Test
    void hoursOfAMonthAddUpToItsFigures() {
        List<String> lines = lines(usual, "hourly.csv");
        double lossKWh = 0;
        double methaneNm3 = 0;
        for (String line : lines.subList(1, 1 + 31 * 24)) {
            String[] cells = line.split(",", -1);
            lossKWh += Double.parseDouble(cells[7]) / 1000;
            methaneNm3 += Double.parseDouble(cells[12]);
        }
        Period january = usual.months().get(0);
        // rows have six digits
        assertEquals(Lines.lossKWh(january) + january.of(GasPart.GAS_LOSS), lossKWh, 2e-3);
        assertEquals(january.of(GasPart.METHANE_MADE), methaneNm3, 744 * 0.5e-7);
    }

    @Test
    void columnsOfACircuitThatIsNotThereAreEmpty() {
        List<String> bare = lines(
                SyntheticRun.of(
                        new SyntheticRun.Case("Bare", SyntheticRun.at(2025, 1), 48, 53, false, Optional.empty())),
                "hourly.csv");
        String[] cells = bare.get(5).split(",", -1);
        assertEquals(14, cells.length);
        for (int column : new int[] {2, 3, 5, 6, 13}) {
            assertEquals("", cells[column], "column " + column);
        }
        assertFalse(cells[1].isEmpty());
    }

    @Test
    void monthlyAndDailyHaveARowEachAndTheFiguresOfTheRun() {
        List<String> monthly = lines(usual, "monthly.csv");
        assertEquals(13, monthly.size());
        assertEquals(366, lines(usual, "daily.csv").size());
        List<String> header = Arrays.asList(monthly.get(0).split(","));
        assertEquals("month", header.get(0));
        String[] july = monthly.get(7).split(",", -1);
        assertEquals("2025-07", july[0]);
        assertEquals(
                usual.months().get(6).of(SolarPart.HEAT),
                Double.parseDouble(july[header.indexOf("solar_heat_kwh")]),
                1e-3);
        assertEquals(
                usual.months().get(6).of(EnvelopePart.DRY_WALL_LOSS),
                Double.parseDouble(july[header.indexOf("envelope_loss_dry_wall_kwh")]),
                1e-4);
        assertEquals("744", july[header.indexOf("hours")]);
        assertTrue(header.contains("ledger_residual_fraction"));
        assertTrue(header.contains("slurry_least_c"));
        assertTrue(header.contains("stored_backup_circuit_kwh"));
    }

    @Test
    void figuresOfAnAbsentCircuitAreEmptyInTheTablesToo() {
        YearResult run = SyntheticRun.withoutSun();
        List<String> monthly = lines(run, "monthly.csv");
        List<String> header = Arrays.asList(monthly.get(0).split(","));
        String[] may = monthly.get(5).split(",", -1);
        assertEquals("", may[header.indexOf("collector_absorbed_kwh")]);
        assertEquals("", may[header.indexOf("solar_pump_starts")]);
        assertEquals("0", may[header.indexOf("solar_share")]);
        assertFalse(may[header.indexOf("backup_heat_kwh")].isEmpty());
    }

    @Test
    void noCellIsAFormulaWhateverTheTitle() {
        for (String title : List.of("=HYPERLINK(1)", "+1", "@x", "-2+3")) {
            YearResult run = SyntheticRun.of(
                    new SyntheticRun.Case(title, SyntheticRun.at(2025, 1), 240, 53, true, Optional.empty()));
            for (String name : List.of("hourly.csv", "daily.csv", "monthly.csv")) {
                lines(run, name).forEach(line -> assertHarmless(name, line));
            }
        }
    }

    /** A cell that a spreadsheet would compute starts with one of four signs; a minus may only start a number. */
    private static void assertHarmless(String name, String line) {
        for (String cell : line.split(",", -1)) {
            assertFalse(cell.matches("[=+@].*|-[^0-9].*|-\\d[^eE]*[-+].*"), name + ": " + cell);
        }
    }

    @Test
    void linesEndWithALineFeedAlone() {
        String text = new String(
                Summary.document(usual).data().csv().get("monthly.csv").bytes(), StandardCharsets.UTF_8);
        assertTrue(text.endsWith("\n"));
        assertFalse(text.contains("\r"));
    }

    private static List<String> lines(YearResult run, String file) {
        byte[] csv = Summary.document(run).data().csv().get(file).bytes();
        return new String(csv, StandardCharsets.UTF_8).lines().toList();
    }
}
