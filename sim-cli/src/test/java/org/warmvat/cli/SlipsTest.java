package org.warmvat.cli;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.warmvat.cli.file.DesignDocument;
import org.warmvat.cli.file.InputRefused;
import org.warmvat.design.Design;
import org.warmvat.design.gas.Gas;
import org.warmvat.design.heating.BackupCircuit;
import org.warmvat.design.keys.Refused;
import org.warmvat.question.plausible.Plausibility;
import org.warmvat.question.plausible.Remark;
import org.warmvat.question.starter.Starter;
import org.warmvat.weather.Weather;
import org.warmvat.weather.file.WeatherFiles;

/**
 * Slips of ten, of units, of missing parts in a sensible starter: each is refused or remarked on, in the one place from which every command takes
 * its remarks; the starter itself is not.
 */
class SlipsTest {

    private static final Weather WEATHER = WeatherFiles.demonstration();
    private static final Design STARTER = Starter.of(650, 36, WEATHER).design();

    private static List<String> remarks(Design design) {
        return Plausibility.of(design, Optional.of(WEATHER)).stream()
                .filter(remark -> remark.gravity() != Remark.Gravity.NOTE)
                .map(Remark::key)
                .toList();
    }

    @ParameterizedTest
    @CsvSource({
        "feed.feedstocks[0].kg_per_day, 43.6, loading",
        "feed.feedstocks[0].kg_per_day, 4355, loading",
        "feed.feedstocks[0].total_solids, 0.95, loading",
        "feed.water.kg_per_day, 150, retention",
        "feed.water.kg_per_day, 7200, retention",
        "envelope.insulation_mm, 0.11, insulation",
        "envelope.insulation_mm, 11, insulation",
        "envelope.lid_insulation_mm, 1.3, insulation",
        "tank.inner_diameter_m, 9, litres",
        "tank.inner_diameter_m, 0.09, litres",
        "tank.liquid_depth_m, 0.05, litres",
        "tank.liquid_depth_m, 10.3, heater",
        "control.setpoint_c, 60, setpoint_window",
        "control.setpoint_c, 45, setpoint_window",
        "control.setpoint_c, 9, setpoint_window",
        "solar.area_m2, 24, collector",
        "solar.area_m2, 250, collector",
        "backup.rated_w, 2, heater",
        "backup.rated_w, 20, heater",
        "backup.rated_w, 20000, heater",
        "backup.coil.area_m2, 0.01, backup_coil",
        "backup.flow_limit_c, 37, backup_coil",
        "fittings[0].ua_w_k, 250, heater",
        "fittings[3].bar.section_mm2, 40000, heater"
    })
    void aSlipIsRemarkedOnOrRefused(String key, double slip, String remark) {
        assertTrue(remarks(STARTER).isEmpty(), "the starter itself: " + remarks(STARTER));
        try {
            List<String> found = remarks(STARTER.with(key, slip));
            assertTrue(found.contains(remark), key + " " + slip + ": " + found);
        } catch (Refused refused) {
            assertTrue(
                    refused.faults().toString().contains("expected"),
                    refused.faults().toString());
        }
    }

    /** What the schema bars never comes so far: a share in per cent, an efficiency above one, a negative power. */
    @ParameterizedTest
    @CsvSource({
        "feed.feedstocks[0].total_solids, 22",
        "gas.methane_fraction, 58",
        "mixer.drive_efficiency, 20",
        "mixer.drive_efficiency, 5e-324",
        "envelope.insulation_mm, 0.000001",
        "solar.eta0, 78",
        "backup.rated_w, -500",
        "tank.liquid_depth_m, -1"
    })
    void whatCannotBeIsRefused(String key, double slip) {
        DesignDocument document =
                DesignDocument.parse("starter", StarterText.of(650, 36, WEATHER, Starter.AtHand.NOTHING));
        String fault = "";
        try {
            document.judge(tank -> tank.with(key, slip));
        } catch (InputRefused refused) {
            fault = refused.faults().toString();
        }
        assertTrue(fault.contains("expected") && fault.contains(key), key + ": " + fault);
    }

    @ParameterizedTest
    @CsvSource({"heater", "gas"})
    void aMissingPartIsRemarkedOn(String part) {
        Design without = part.equals("heater") ? STARTER.without(BackupCircuit.class) : STARTER.without(Gas.class);
        List<String> keys = Plausibility.of(without, Optional.of(WEATHER)).stream()
                .map(Remark::key)
                .toList();
        assertTrue(keys.contains("no_" + part), keys.toString());
    }
}
