package org.warmvat.checks;

import org.warmvat.design.Design;
import org.warmvat.design.surroundings.Place;
import org.warmvat.design.surroundings.StandsOn;
import org.warmvat.design.tank.Shape;
import org.warmvat.design.tank.Tank;

/**
 * Published: manual TT 389, municipal wastewater management (attributed from memory to the South African Water Research
 * Commission): heat content of sludge. Seen. Conditions: contents counted as water. Tolerance: half the last printed digit.
 */
class SludgeHeatTt389Test implements Published {

    @Override
    public Source source() {
        return new Source(
                Topic.DIGESTERS,
                "Manual TT 389",
                "Manual TT 389, municipal wastewater management",
                "Contents counted as water, 1000 kg/m3.",
                Source.HALF_DIGIT);
    }

    @Override
    public void fill(Sheet sheet) {
        Tank tank = new Tank(new Shape.UprightCylinder(1), 1, 0.2, StandsOn.LEGS, new Place.Indoors(20));
        Design design = Designs.of(tank, Designs.bare());
        double perLitre = design.contentsHeatCapacityJPerK() / tank.liquidVolumeM3() / 1e6;
        sheet.table(Provenance.SEEN).value("heat of a litre of sludge, kJ/K", 4.2, perLitre, 0.05);
    }
}
