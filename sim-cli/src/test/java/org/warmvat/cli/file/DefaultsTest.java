package org.warmvat.cli.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.warmvat.cli.file.DesignTexts.smallWith;
import static org.warmvat.cli.file.DesignTexts.yaml;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.warmvat.design.Design;
import org.warmvat.design.envelope.Layer;
import org.warmvat.design.envelope.Material;
import org.warmvat.design.feeding.DigestionRate;
import org.warmvat.design.feeding.Estimate;
import org.warmvat.design.feeding.FeedTemperature;
import org.warmvat.design.feeding.Feedstock;
import org.warmvat.design.feeding.MethanePotential;
import org.warmvat.design.heating.BackupCircuit;
import org.warmvat.design.heating.Coil;
import org.warmvat.design.season.DailySchedule;
import org.warmvat.design.surroundings.Exposure;
import org.warmvat.design.surroundings.Place;
import org.warmvat.design.surroundings.StandsOn;
import org.warmvat.design.tank.Mixer;

/** What an absent key stands for, and that it is said. */
class DefaultsTest {

    private static final Material STEEL = new Material("stainless_steel", 17, 7900, 460);
    private static final Material PIR = new Material("pir_foam", 0.027, 32, 1400);

    @Test
    void theSmallestDesign() {
        Design design = yaml(DesignTexts.SMALL).design();
        assertEquals("untitled tank", design.title());
        assertEquals(0.25, design.tank().headspaceHeightM());
        assertEquals(StandsOn.LEGS, design.tank().standsOn());
        assertEquals(
                new Place.Outdoors(Exposure.SHELTERED, Optional.empty(), 0.4),
                design.tank().place());
        List<Layer> part = List.of(new Layer(STEEL, 0.002, 1), new Layer(PIR, 0.1, 3));
        assertEquals(part, design.envelope().wall());
        assertEquals(part, design.envelope().lid());
        assertEquals(part, design.envelope().floor());
        assertEquals(List.of(), design.fittings());
        assertEquals(
                List.of(new Feedstock(
                        Optional.empty(),
                        "kitchen scraps",
                        10,
                        0.22,
                        0.88,
                        MethanePotential.ofNumber(0.42),
                        DigestionRate.ofNumber(0.20))),
                design.feed().feedstocks());
        assertEquals(new FeedTemperature.Air(), design.feed().temperature());
        assertEquals(Optional.empty(), design.feed().water());
        assertEquals(
                List.of(new DailySchedule.Span(28_800, 39_600)),
                design.feed().schedule().spans());
        assertEquals(new Mixer(new Mixer.Turning(4, 60), 0.2, 6, 60), design.mixer());
        assertEquals(34, design.control().minimumC());
        assertTrue(design.solar().isEmpty()
                && design.backup().isEmpty()
                && design.gas().isEmpty());
    }

    @Test
    void presentBlocksTakeTheRestFromTheDemonstration() {
        Design full = DesignDocument.demonstration().design();
        Design design =
                yaml(DesignTexts.SMALL + "solar: {}\nbackup: {}\ngas: {}\n").design();
        Coil solarCoil = new Coil(1.0, 100, Optional.empty(), 0.0005);
        assertEquals(
                solarCoil,
                design.solar().orElseThrow().coil(),
                "without u_still_w_m2k the coil does not mind the mixer");
        assertEquals(
                full.solar().orElseThrow().loop(), design.solar().orElseThrow().loop());
        assertEquals(
                full.solar().orElseThrow().pumpControl(),
                design.solar().orElseThrow().pumpControl());
        assertTrue(design.solar().orElseThrow().collector().plane().azimuthDeg().isEmpty(), "towards the equator");
        BackupCircuit.Circuit circuit =
                (BackupCircuit.Circuit) design.backup().orElseThrow().through();
        assertEquals(new Coil(0.8, 100, Optional.empty(), 0.0005), circuit.coil());
        assertEquals(8, circuit.waterKg());
        assertEquals(500, design.backup().orElseThrow().ratedW());
        assertEquals(
                full.gas().orElseThrow().temperatures(),
                design.gas().orElseThrow().temperatures());
        assertEquals(Optional.empty(), design.gas().orElseThrow().airDosing(), "no block, no air dosing");
    }

    @Test
    void blocksThatAreAbsentAltogetherAreTheDemonstrations() {
        Design full = DesignDocument.demonstration().design();
        Design design = yaml(DesignTexts.SMALL).design();
        assertEquals(full.prices(), design.prices());
        assertEquals(full.contents(), design.contents());
        assertEquals(full.site(), design.site());
        assertEquals(full.runIn(), design.runIn());
        assertEquals(full.envelope().films(), design.envelope().films());
        assertEquals(full.envelope().outerFace(), design.envelope().outerFace());
    }

    @Test
    void everyDefaultIsSaidOnce() {
        List<String> assumed = yaml(DesignTexts.SMALL).assumed();
        assertEquals(assumed.size(), assumed.stream().distinct().count());
        assertTrue(assumed.contains("envelope.films.wet_w_m2k not given: 100 W/m²K"), assumed.toString());
        assertTrue(assumed.contains("feed.windows not given: start 08:00, hours 3"));
        assertTrue(assumed.contains("fittings not given: none"));
        assertTrue(assumed.contains("tank.exposure_factor not given: 0.4, by place (sheltered)"));
        assertTrue(
                assumed.contains(
                        "contents.total_solids not given: the feed's solids less the volatile solids digested at steady state and set-point"));
        assertFalse(
                assumed.stream().anyMatch(s -> s.startsWith("solar") || s.startsWith("backup") || s.startsWith("gas")));
        assertFalse(assumed.stream().anyMatch(s -> s.startsWith("control.setpoint_c")));
    }

    @Test
    void alternativesSilenceTheDefaultTheyReplace() {
        List<String> assumed = yaml(DesignTexts.SMALL.replace("setpoint_c: 36", "setpoint_c: 36, floor_c: 20")
                        + "mixer: {shaft_w: 2}\nsolar: {tank_high_limit_c: 50}\nbackup: {through: immersed}\nrun_in: {days: 4}\n")
                .assumed();
        for (String silent : List.of(
                "control.floor_below",
                "mixer.torque",
                "solar.limit_above",
                "backup.water_kg",
                "backup.coil",
                "run_in.")) {
            assertFalse(assumed.stream().anyMatch(s -> s.startsWith(silent)), silent);
        }
    }

    @Test
    void nothingIsAssumedWhereAllIsGiven() {
        List<String> assumed = DesignDocument.demonstration().assumed();
        assertFalse(assumed.stream()
                .anyMatch(s -> s.startsWith("mixer") || s.startsWith("tank.inner") || s.startsWith("fittings")));
    }

    @Test
    void windFactorsByPlace() {
        String tank = "tank: {inner_diameter_m: 1, liquid_depth_m: 1, place: ";
        assertEquals(
                new Place.Outdoors(Exposure.OPEN, Optional.empty(), 0.4),
                yaml(smallWith(tank + "open}")).design().tank().place());
        assertEquals(
                new Place.Outdoors(Exposure.UNDER_ROOF, Optional.empty(), 0.4),
                yaml(smallWith(tank + "under_roof}")).design().tank().place());
        assertEquals(
                new Place.Outdoors(Exposure.OPEN, Optional.of(0.5), 0.3),
                yaml(smallWith(tank + "open, exposure_factor: 0.5, floor_exposure_factor_most: 0.3}"))
                        .design()
                        .tank()
                        .place());
        assertEquals(
                new Place.Indoors(14),
                yaml(smallWith(tank + "indoors, room_c: 14}")).design().tank().place());
    }

    @Test
    void shellAndInsulationInShort() {
        Design design = yaml(smallWith(
                        "envelope: {shell: steel, shell_mm: 4, insulation: xps_foam, insulation_mm: 80, lid_insulation_mm: 120, floor_insulation_mm: 0}"))
                .design();
        assertEquals(0.08, design.envelope().wall().get(1).thicknessM());
        assertEquals(0.12, design.envelope().lid().get(1).thicknessM());
        assertEquals(1, design.envelope().floor().size(), "no insulation, no layer");
        assertEquals("steel", design.envelope().floor().get(0).material().name());
        assertEquals("xps_foam", design.envelope().lid().get(1).material().name());
    }

    @Test
    void materialsOfOnesOwn() {
        Design design = yaml(smallWith("""
                        envelope:
                          insulation_sub_nodes: 5
                          wall: [{material: steel, thickness_mm: 2}, {material: cork_board, thickness_mm: 50}]
                          lid: [{material: {conductivity_w_mk: 1, density_kg_m3: 2, specific_heat_j_kgk: 300}, thickness_mm: 5}]
                          floor: [{conductivity_w_mk: 0.09, density_kg_m3: 2, specific_heat_j_kgk: 300, thickness_mm: 5, sub_nodes: 2}]
                        materials:
                          cork_board: {conductivity_w_mk: 0.043, density_kg_m3: 120, specific_heat_j_kgk: 1700}
                          steel: {conductivity_w_mk: 45, density_kg_m3: 7800, specific_heat_j_kgk: 450}""")).design();
        assertEquals(
                new Material("steel", 45, 7800, 450),
                design.envelope().wall().get(0).material(),
                "overridden");
        assertEquals(
                new Layer(new Material("cork_board", 0.043, 120, 1700), 0.05, 5),
                design.envelope().wall().get(1));
        assertEquals(
                new Layer(new Material("own material", 1, 2, 300), 0.005, 1),
                design.envelope().lid().get(0));
        assertEquals(
                new Layer(new Material("own material", 0.09, 2, 300), 0.005, 2),
                design.envelope().floor().get(0));
    }

    @Test
    void timesOfDay() {
        Design design = yaml(smallWith(
                                "feed: {feedstocks: [{kg_per_day: 1}], windows: [{start: \"23:30\", hours: 1.5}]}")
                        + "backup: {allowed_hours: [\"22:00-06:00\", \"12:15-13:00\"]}\n")
                .design();
        assertEquals(
                List.of(new DailySchedule.Span(0, 3600), new DailySchedule.Span(84_600, 86_400)),
                design.feed().schedule().spans());
        assertEquals(
                List.of(
                        new DailySchedule.Span(0, 21_600),
                        new DailySchedule.Span(44_100, 46_800),
                        new DailySchedule.Span(79_200, 86_400)),
                design.backup().orElseThrow().allowedHours().spans());
        assertTrue(yaml(smallWith("feed: {feedstocks: [{kg_per_day: 1}], continuous: true}"))
                .design()
                .feed()
                .schedule()
                .isContinuous());
    }

    @Test
    void heatPumpAndBurnerEfficiencies() {
        assertEquals(
                3.2,
                yaml(smallWith("backup: {efficiency: 3.2}"))
                        .design()
                        .backup()
                        .orElseThrow()
                        .efficiency());
        assertEquals(
                0.6,
                yaml(smallWith("backup: {source: fuel, efficiency: 0.6}"))
                        .design()
                        .backup()
                        .orElseThrow()
                        .efficiency());
    }

    @Test
    void cautions() {
        assertEquals(List.of(), yaml(DesignTexts.SMALL).cautions());
        assertEquals(
                List.of(
                        "contents.total_solids 0.01 is far from 0.220, which feed and digestion at the set-point lead to",
                        "backup.water_kg: without effect beside through: immersed"),
                yaml(DesignTexts.SMALL + "contents: {total_solids: 0.01}\nbackup: {through: immersed, water_kg: 3}\n")
                        .cautions());
    }

    @Test
    void aFeedstockByItsMaterial() {
        Design design = yaml(smallWith("""
                feed:
                  feedstocks:
                    - {material: leaves, kg_per_day: 6}
                    - {material: poultry_droppings, kg_per_day: 1, total_solids: 0.25, rate_per_day: 0.1, name: hens}
                    - {name: own, kg_per_day: 2, methane_nm3_per_kg_vs: {low: 0.1, middle: 0.2, high: 0.4}}""")).design();
        Feedstock leaves = design.feed().feedstocks().get(0);
        assertEquals("leaves", leaves.name());
        assertEquals(0.40, leaves.totalSolidsFraction());
        assertEquals(0.14, leaves.methaneNm3PerKgVs());
        assertEquals(0.10, leaves.at(Estimate.LOW).methaneNm3PerKgVs());
        assertEquals(0.05, leaves.at(Estimate.HIGH).ratePerDay());
        Feedstock hens = design.feed().feedstocks().get(1);
        assertEquals(0.25, hens.totalSolidsFraction());
        assertEquals(0.73, hens.volatileOfTotalSolids());
        assertEquals(0.06, hens.at(Estimate.LOW).ratePerDay(), 1e-15, "a plain number may be two fifths off");
        assertEquals(0.4, design.at(Estimate.HIGH).feed().feedstocks().get(2).methaneNm3PerKgVs());
        assertEquals(0.2, design.number("feed.feedstocks[own].methane_nm3_per_kg_vs"));
        assertEquals(
                0.3,
                design.with("feed.feedstocks[own].methane_nm3_per_kg_vs", 0.3)
                        .number("feed.feedstocks[own].methane_nm3_per_kg_vs"));
    }
}
