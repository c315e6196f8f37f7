package org.warmvat.checks;

import java.util.List;
import java.util.Optional;
import org.warmvat.design.Design;
import org.warmvat.design.feeding.DigestionRate;
import org.warmvat.design.feeding.Feed;
import org.warmvat.design.feeding.FeedTemperature;
import org.warmvat.design.feeding.Feedstock;
import org.warmvat.design.feeding.MethanePotential;
import org.warmvat.design.surroundings.Place;
import org.warmvat.design.surroundings.StandsOn;
import org.warmvat.design.tank.Contents;
import org.warmvat.design.tank.Shape;
import org.warmvat.design.tank.Tank;
import org.warmvat.envelope.LayerChain;
import org.warmvat.tank.DerivedFigures;

/**
 * Published: D. H. F. Liu and B. G. Liptak (eds), Environmental Engineers' Handbook, 2nd ed. 1997, section 7.45, anaerobic
 * digester design example, all steps of its heat sum, and its rules of thumb. Seen. Conditions: two tanks of 48 ft by 15 ft at
 * 95 °F. Tolerance: 2 Btu/h for losses, whose areas are printed in whole square feet; 0.1 % where feed comes in, since the
 * program's water has 4186 and the book's 4187 J/kgK.
 */
class DigesterHeatingLiuLiptak1997Test implements Published {

    private static final double FOOT_M = 0.3048;
    private static final double BTU_PER_H_W = 0.29307107;
    private static final double U_BTU = 5.678263;
    private static final double LB_KG = 0.45359237;
    private static final Tank TANK =
            new Tank(new Shape.UprightCylinder(48 * FOOT_M), 15 * FOOT_M, 0.5, StandsOn.GROUND, new Place.Indoors(10));

    @Override
    public Source source() {
        return new Source(
                Topic.DIGESTERS,
                "Environmental Engineers' Handbook",
                "D. H. F. Liu, B. G. Liptak (eds), Environmental Engineers' Handbook, 2nd ed. 1997, section 7.45,"
                        + " https://www.ecologycenter.us/wastewater-treatment/anaerobic-digester-design-example.html and the pages"
                        + " on primary digester heating and gas production beside it.",
                "Two tanks 48 ft x 15 ft, 95 °F inside; cover 0.50 (from the printed loss), dry wall 0.18 on 75 %, wet wall 0.25 on"
                        + " 25 %, floor 0.12 Btu/(h ft2 °F); air 10, dry ground 25, ground water 40 °F; feed 20 172 lb/d of solids"
                        + " at 6.8 % and 50 °F, counted as water.",
                "2 Btu/h for losses, whose areas are printed in whole square feet; 0.1 % with feed, whose water has 4186 J/kgK here"
                        + " and 1 Btu/(lb °F) there; 0.5 % for the rule of thumb.");
    }

    private static double celsius(double fahrenheit) {
        return (fahrenheit - 32) / 1.8;
    }

    /** Loss of both tanks through a face, Btu/h. */
    private static double loss(double areaM2, double uBtu, double outsideF) {
        LayerChain chain = LayerChain.plane(List.of(Chains.layer(0.1, 0.1 * uBtu * U_BTU)), 2 * areaM2, Chains.RULES);
        return new Chains.Wall(chain, Chains.NO_FILM, Chains.NO_FILM).watts(celsius(95), celsius(outsideF))
                / BTU_PER_H_W;
    }

    private static double feed() {
        Feed feed = Designs.feed(
                new FeedTemperature.Fixed(celsius(50)),
                new Feedstock(
                        Optional.empty(),
                        "primary",
                        12_010 * LB_KG / 0.068,
                        0,
                        0,
                        MethanePotential.ofNumber(0.3),
                        DigestionRate.ofNumber(0.1)),
                new Feedstock(
                        Optional.empty(),
                        "activated",
                        8_162 * LB_KG / 0.068,
                        0,
                        0,
                        MethanePotential.ofNumber(0.3),
                        DigestionRate.ofNumber(0.1)));
        Contents water = Designs.water(1000);
        Design design = Designs.of(TANK, Designs.bare(), feed, water, Optional.empty());
        return DerivedFigures.of(design, 0, 10, 10).coldFeedW() / BTU_PER_H_W;
    }

    /** What a day of the rule's loss takes from a cubic metre, K. */
    private static double coolingKPerDay() {
        Design design = Designs.of(TANK, Designs.bare());
        double capacity = design.contentsHeatCapacityJPerK() / TANK.liquidVolumeM3();
        Vessel cooling = new Vessel(capacity, 35, (timeS, celsius) -> -26.9);
        return 35 - cooling.afterS(86_400);
    }

    @Override
    public void fill(Sheet sheet) {
        double plan = TANK.innerPlanAreaM2();
        double wall = TANK.innerPerimeterM() * TANK.liquidDepthM();
        double cover = loss(plan, 0.50, 10);
        double dry = loss(0.75 * wall, 0.18, 25);
        double wet = loss(0.25 * wall, 0.25, 40);
        double floor = loss(plan, 0.12, 40);
        double losses = cover + dry + wet + floor;
        sheet.table(Provenance.SEEN)
                .value("cover, Btu/h", 153_813, cover, 2)
                .value("dry wall, Btu/h", 42_751, dry, 2)
                .value("wet wall, Btu/h", 15_551, wet, 2)
                .value("floor, Btu/h", 23_886, floor, 2)
                .value("all losses, Btu/h", 236_001, losses, 4);
        double feed = feed();
        sheet.table(Provenance.SEEN)
                .value("feed, Btu/h", 556_213, feed, 556)
                .value("whole duty, Btu/h", 792_214, losses + feed, 792);
        sheet.table(Provenance.SEEN).value("26.9 W/m3 of loss as cooling, K/day", 0.556, coolingKPerDay(), 0.003);
    }
}
