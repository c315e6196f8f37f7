package org.warmvat.cli.file;

import static org.warmvat.cli.file.DesignTexts.assertFaults;
import static org.warmvat.cli.file.DesignTexts.smallWith;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What only several keys together make wrong, in full messages. */
class AcrossKeysTest {

    @Test
    void boxWithADiameter() {
        assertFaults(
                smallWith("tank: {shape: box, inner_diameter_m: 1, liquid_depth_m: 1}"),
                "d.yaml line 1: tank.inner_diameter_m has no place here: it goes with shape: upright_cylinder",
                "d.yaml line 1: tank.inner_length_m is missing, expected a number, 0.2 to 20 m (needed for shape: box)",
                "d.yaml line 1: tank.inner_width_m is missing, expected a number, 0.2 to 20 m (needed for shape: box)");
    }

    @Test
    void cylinderWithSides() {
        String reason = " has no place here: it goes with shape: box";
        assertFaults(
                smallWith("tank: {inner_length_m: 1, inner_width_m: 1, box_azimuth_deg: 3, liquid_depth_m: 1}"),
                "d.yaml line 1: tank.box_azimuth_deg" + reason,
                "d.yaml line 1: tank.inner_length_m" + reason,
                "d.yaml line 1: tank.inner_width_m" + reason,
                "d.yaml line 1: tank.inner_diameter_m is missing, expected a number, 0.2 to 20 m (needed for shape: upright_cylinder)");
    }

    @Test
    void roomAndPlace() {
        assertFaults(
                smallWith("tank: {inner_diameter_m: 1, liquid_depth_m: 1, place: indoors, exposure_factor: 0.4}"),
                "d.yaml line 1: tank.exposure_factor has no place here: it goes with place: open or sheltered or under_roof",
                "d.yaml line 1: tank.room_c is missing, expected a number, -30 to 50 C (needed for place: indoors)");
        assertFaults(
                smallWith("tank: {inner_diameter_m: 1, liquid_depth_m: 1, room_c: 12}"),
                "d.yaml line 1: tank.room_c has no place here: it goes with place: indoors");
    }

    @Test
    void layersAndShell() {
        String reason = " has no place here: wall is given: give the one or the other";
        assertFaults(
                smallWith("envelope: {wall: [{material: steel, thickness_mm: 2}], shell: steel, insulation_mm: 5}"),
                "d.yaml line 2: envelope.insulation_mm" + reason,
                "d.yaml line 2: envelope.shell" + reason,
                "d.yaml line 2: envelope.lid is missing, expected a list with at least one entry (needed beside wall)",
                "d.yaml line 2: envelope.floor is missing, expected a list with at least one entry (needed beside wall)");
        assertFaults(
                smallWith("envelope: {shell: steel}"),
                "d.yaml line 2: envelope.insulation_mm is missing, expected a number, 0 to 2000 mm (needed beside shell)");
    }

    @Test
    void unknownMaterials() {
        assertFaults(
                smallWith("envelope: {insulation_mm: 90, insulation: pir_fome, shell: stainless steel}"),
                "d.yaml line 2: envelope.shell \"stainless steel\" is not a known material, did you mean stainless_steel? (others go into the block materials)",
                "d.yaml line 2: envelope.insulation \"pir_fome\" is not a known material, did you mean pir_foam? (others go into the block materials)");
    }

    @Test
    void unknownMaterialUnlikeAnyOther() {
        assertFaults(
                smallWith("fittings: [{name: legs, bar: {material: unobtainium, section_mm2: 400, length_mm: 150}}]"),
                "d.yaml line 5: fittings[0].bar.material \"unobtainium\" is not a known material, expected one of "
                        + String.join(
                                ", ",
                                org.warmvat.design.envelope.Material.known().keySet())
                        + " (others go into the block materials)");
    }

    @Test
    void layerWithMaterialAndNumbers() {
        assertFaults(
                smallWith("""
                        envelope:
                          wall: [{material: steel, thickness_mm: 2, density_kg_m3: 100}]
                          lid: [{thickness_mm: 2, density_kg_m3: 100}]
                          floor: [{thickness_mm: 2, conductivity_w_mk: 1, density_kg_m3: 100, specific_heat_j_kgk: 1000}]"""),
                "d.yaml line 3: envelope.wall[0].density_kg_m3 has no place here: material is given",
                "d.yaml line 4: envelope.lid[0].conductivity_w_mk is missing, expected a number, 0.002 to 500 W/mK (or material instead)",
                "d.yaml line 4: envelope.lid[0].specific_heat_j_kgk is missing, expected a number, 100 to 5000 J/kgK (or material instead)");
    }

    @Test
    void fittingsNeedOneForm() {
        assertFaults(
                smallWith(
                        "fittings: [{name: neck}, {name: hatch, ua_w_k: 1, bar: {section_mm2: 1, length_mm: 10}, pipe: {bore_mm: 100, length_m: 1}}]"),
                "d.yaml line 5: fittings[0].ua_w_k is missing, expected a number, 0 to 1000 W/K (or instead bar, pipe)",
                "d.yaml line 5: fittings[1].bar has no place here: pipe is given: give the one or the other",
                "d.yaml line 5: fittings[1].ua_w_k has no place here: pipe is given: give the one or the other");
    }

    @Test
    void feedFromARoomThatIsNotThere() {
        String fact =
                " room, but the tank is not in a room, expected place: indoors with room_c, or air, ground or {fixed_c: number}";
        assertFaults(
                smallWith("feed: {feedstocks: [{kg_per_day: 10}], temperature: room, water: {temperature: room}}"),
                "d.yaml line 4: feed.temperature" + fact,
                "d.yaml line 4: feed.water.temperature" + fact);
    }

    @Test
    void windowsAndContinuous() {
        assertFaults(
                smallWith(
                        "feed: {feedstocks: [{kg_per_day: 10}], continuous: true, windows: [{start: \"08:00\", hours: 1}]}"),
                "d.yaml line 4: feed.windows has no place here: it goes with continuous: false");
    }

    @Test
    void shaftPowerAndTorque() {
        assertFaults(
                smallWith("mixer: {shaft_w: 3, torque_nm: 4, revolutions_per_hour: 3}"),
                "d.yaml line 5: mixer.revolutions_per_hour has no place here: shaft_w is given: give the one or the other",
                "d.yaml line 5: mixer.torque_nm has no place here: shaft_w is given: give the one or the other");
    }

    @ParameterizedTest
    @CsvSource({"1.5, 1.5", "1, 2"})
    void startDifferenceNotAboveStopDifference(String start, String stop) {
        assertFaults(
                smallWith("solar: {start_difference_k: " + start + ", stop_difference_k: " + stop + "}"),
                "d.yaml line 5: solar.start_difference_k " + start + ", expected above stop_difference_k, " + stop
                        + " K");
    }

    @Test
    void solarLimits() {
        assertFaults(
                smallWith("solar: {tank_high_limit_c: 35, limit_above_setpoint_k: 2}"),
                "d.yaml line 5: solar.limit_above_setpoint_k has no place here: tank_high_limit_c is given: give the one or the other",
                "d.yaml line 5: solar.tank_high_limit_c 35, expected control.setpoint_c, 36 C, or above");
        assertFaults(
                smallWith("control: {setpoint_c: 60}") + "solar: {limit_above_setpoint_k: 41}\n",
                "d.yaml line 5: solar.limit_above_setpoint_k 41, expected set-point and this together up to 100 C");
    }

    @Test
    void circuitWithoutHeatCapacity() {
        assertFaults(
                smallWith("solar: {area_m2: 0, loop_capacity_j_k: 0}"),
                "d.yaml line 5: solar.loop_capacity_j_k 0, expected area_m2 x c5_j_m2k and this together at least 1 J/K");
    }

    @Test
    void ownGasWithoutGas() {
        assertFaults(
                smallWith("backup: {source: own_gas}"),
                "d.yaml line 5: backup.source own_gas, but no gas is computed, expected a gas block, or electric or fuel");
    }

    @Test
    void allowedHoursWithoutLength() {
        assertFaults(
                smallWith("backup: {allowed_hours: [\"00:00-24:00\", \"08:00-08:00\"]}"),
                "d.yaml line 5: backup.allowed_hours[1] \"08:00-08:00\" has no length, expected an end other than the start");
    }

    @Test
    void floorTemperature() {
        assertFaults(
                smallWith("control: {setpoint_c: 36, floor_c: 36.5}"),
                "d.yaml line 3: control.floor_c 36.5, expected up to setpoint_c, 36 C");
        assertFaults(
                smallWith("control: {setpoint_c: 36, floor_c: 30, floor_below_setpoint_k: 2}"),
                "d.yaml line 3: control.floor_below_setpoint_k has no place here: floor_c is given: give the one or the other");
        assertFaults(
                smallWith("control: {setpoint_c: 36, floor_below_setpoint_k: 50}"),
                "d.yaml line 3: control.floor_below_setpoint_k 50, expected a minimum temperature of -10 C or above");
    }

    @Test
    void dailyChanges() {
        assertFaults(
                smallWith("control: {setpoint_c: 36, daily_change_notice_k: 3}"),
                "d.yaml line 3: control.daily_change_warning_k 2, expected daily_change_notice_k, 3 K, or above");
    }

    @Test
    void temperaturesOfDigestion() {
        assertFaults(
                smallWith("gas: {temperatures_c: {best: 27}}"),
                "d.yaml line 5: gas.temperatures_c.best 27, expected above the mean of least and most, 27 C, and below most, 46 C");
        assertFaults(
                smallWith("gas: {temperatures_c: {least: 50}}"),
                "d.yaml line 5: gas.temperatures_c.least 50, expected below most, 46 C");
        assertFaults(
                smallWith("gas: {reference_c: 46}"),
                "d.yaml line 5: gas.reference_c 46, expected between temperatures_c.least and most, 8 and 46 C");
    }

    @Test
    void groundWaveInPart() {
        assertFaults(
                smallWith("ground: {amplitude_k: 8}"),
                "d.yaml line 5: ground.mean_c is missing, expected a number, -30 to 40 C (needed beside amplitude_k)",
                "d.yaml line 5: ground.coldest_day is missing, expected a number, 0 to 366 day (needed beside amplitude_k)");
    }

    @Test
    void runIn() {
        assertFaults(
                smallWith("run_in: {days: 5, most_days: 4}"),
                "d.yaml line 5: run_in.most_days has no place here: days is given: give the one or the other");
        assertFaults(
                smallWith("run_in: {most_days: 4}"),
                "d.yaml line 5: run_in.most_days 4, expected least_days, 10 days, or above");
    }
}
