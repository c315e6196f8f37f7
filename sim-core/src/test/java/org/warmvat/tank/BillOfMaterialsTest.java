package org.warmvat.tank;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.warmvat.design.Design;
import org.warmvat.design.keys.Findings;
import org.warmvat.design.keys.Reader;

/** Areas and lengths by hand. */
class BillOfMaterialsTest {

    private static final Design TANK = Design.of(
            Reader.tree("{tank: {inner_diameter_m: 1.0, liquid_depth_m: 1.2, headspace_height_m: 0.3, stands_on: legs},"
                    + " envelope: {shell: steel, shell_mm: 2, insulation: pir_foam, insulation_mm: 100, lid_insulation_mm: 120},"
                    + " fittings: [{name: legs, bar: {material: steel, section_mm2: 400, length_mm: 150, count: 4}},"
                    + " {name: outlet, pipe: {bore_mm: 110, length_m: 0.6}}],"
                    + " control: {setpoint_c: 36}, feed: {feedstocks: [{kg_per_day: 10}]}, solar: {area_m2: 2, coil: {area_m2: 1}},"
                    + " backup: {rated_w: 500}}"),
            Findings.strict());

    private static double amount(String what) {
        List<BillOfMaterials.Item> found = BillOfMaterials.of(TANK).stream()
                .filter(item -> item.what().equals(what))
                .toList();
        assertEquals(1, found.size(), what + " in " + BillOfMaterials.of(TANK));
        return found.get(0).amount();
    }

    @Test
    void boardsAndSheetsByThickness() {
        double plan = Math.PI / 4;
        assertEquals(Math.PI * (1 + 2 * 0.052) * 1.5 + plan, amount("PIR foam, 100 mm"), 1e-9);
        assertEquals(plan, amount("PIR foam, 120 mm"), 1e-9);
        assertEquals(Math.PI * (1 + 0.002) * 1.5 + 2 * plan, amount("steel, 2 mm"), 1e-9);
    }

    @Test
    void pipesBarsCoilsAndHeater() {
        assertEquals(0.6, amount("outlet: pipe of 110 mm bore, insulated 0 mm"), 1e-12);
        assertEquals(0.6, amount("legs: bars of 400 mm²"), 1e-12);
        assertEquals(2, amount("solar collector"), 0);
        assertEquals(1, amount("solar coil, outer area"), 0);
        assertEquals(500, amount("backup heater, rated"), 0);
    }
}
