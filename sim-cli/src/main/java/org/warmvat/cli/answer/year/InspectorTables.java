package org.warmvat.cli.answer.year;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.warmvat.cli.answer.Table;
import org.warmvat.cli.words.Numerals;
import org.warmvat.cli.words.Words;
import org.warmvat.design.heating.BackupCircuit;
import org.warmvat.heating.BackupPart;
import org.warmvat.heating.SolarPart;
import org.warmvat.network.Warning;
import org.warmvat.question.year.YearResult;
import org.warmvat.tank.BillOfMaterials;
import org.warmvat.tank.KeyFigures;

/** What a builder orders and an inspector asks for. */
final class InspectorTables {

    private InspectorTables() {}

    static List<Table> of(YearResult run) {
        return List.of(materials(run), temperatures(run));
    }

    private static Table materials(YearResult run) {
        return new Table(
                "Materials",
                List.of("what", "amount"),
                BillOfMaterials.of(run.design()).stream()
                        .map(item -> List.of(item.what(), Words.number(item.amount()) + " " + item.unit()))
                        .toList(),
                "Net, of what the design names: corners, laps, joints, waste, valves and vents are left out. A wall's layer is taken at"
                        + " its middle.",
                new Table.Setting(false, true));
    }

    private static Table temperatures(YearResult run) {
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of(
                "slurry and gas space",
                Words.celsius(run.whole().of(KeyFigures.MOST_C)),
                "set-point " + Words.celsius(run.design().control().setpointC())));
        run.design().solar().ifPresent(solar -> {
            rows.add(List.of(
                    "solar collector and its loop",
                    highest(run, "collector_c", SolarPart.STAGNATION),
                    "stagnation: the tested value of its certificate goes before this"));
            warned(run, SolarPart.SOLAR_CAKING)
                    .ifPresent(worst -> rows.add(List.of(
                            "water into the solar coil",
                            Words.celsius(worst),
                            "start barred above "
                                    + Numerals.six(solar.pumpControl().startBarC()) + " °C")));
        });
        run.design().backup().ifPresent(backup -> {
            if (backup.through() instanceof BackupCircuit.Circuit circuit) {
                rows.add(List.of(
                        "backup water",
                        highest(run, "backup_circuit_c", BackupPart.BACKUP_CAKING),
                        "flow limit " + Words.celsius(circuit.flow().limitC())));
            }
        });
        return new Table(
                "Highest temperatures computed",
                List.of("where", "highest", "held by"),
                rows,
                "Of the slurry in any instant, of circuits at the end of each hour or, where a warning names a higher one, in any instant."
                        + " Fitted limiters and relief valves must hold by themselves; what fails is not computed here.",
                new Table.Setting(false, true));
    }

    private static String highest(YearResult run, String column, String warning) {
        double ends = run.hourly()
                .column(column)
                .map(values -> Arrays.stream(values).max().orElse(Double.NaN))
                .orElse(Double.NaN);
        return Words.celsius(Math.max(ends, warned(run, warning).orElse(ends)));
    }

    private static Optional<Double> warned(YearResult run, String key) {
        return run.warnings().stream()
                .filter(warning -> warning.key().equals(key))
                .map(Warning::worst)
                .findFirst();
    }
}
