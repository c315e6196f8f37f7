package org.warmvat.checks;

import java.util.List;
import java.util.Optional;
import org.warmvat.design.Design;
import org.warmvat.design.feeding.DigestionRate;
import org.warmvat.design.feeding.Feed;
import org.warmvat.design.feeding.FeedTemperature;
import org.warmvat.design.feeding.Feedstock;
import org.warmvat.design.feeding.MethanePotential;
import org.warmvat.design.gas.Gas;
import org.warmvat.design.surroundings.Place;
import org.warmvat.design.surroundings.StandsOn;
import org.warmvat.design.tank.Shape;
import org.warmvat.design.tank.Tank;
import org.warmvat.tank.DerivedFigures;

/**
 * Published: C. J. Banks and others, Bioresource Technology 102 (2011) 612-620: domestic food waste at full scale for 426 days.
 * Seen. Conditions: the design file's default for kitchen waste (0.42 Nm3/kg VS, 0.2 a day, both common practice), eighty days'
 * retention at 35 °C. Tolerance: 20 %, the spread of potentials of food waste in print (398 to 529 L/kg VS).
 */
class FoodWasteBanks2011Test implements Published {

    @Override
    public Source source() {
        return new Source(
                Topic.GAS,
                "Banks and others",
                "C. J. Banks and others, Bioresource Technology 102 (2011) 612-620",
                "642 m3 of biogas per tonne of volatile solids with 62 % methane; here 0.42 Nm3/kg VS, 0.2 a day, 80 days, 35 °C.",
                "20 %: the spread of potentials of food waste in print.");
    }

    @Override
    public void fill(Sheet sheet) {
        Tank tank = new Tank(new Shape.UprightCylinder(2), 2, 0.5, StandsOn.LEGS, new Place.Indoors(20));
        Feedstock waste = new Feedstock(
                Optional.empty(),
                "food waste",
                tank.liquidVolumeM3() * 1000 / 80,
                0.25,
                0.9,
                MethanePotential.ofNumber(0.42),
                DigestionRate.ofNumber(0.2));
        Feed feed = Designs.feed(new FeedTemperature.Fixed(10), waste);
        Gas gas = new Gas(
                35, 0.62, Designs.MESOPHILIC, Optional.empty(), 0, 1440, Optional.empty(), List.of(), Optional.empty());
        Design design = Designs.of(tank, Designs.bare(), feed, Designs.water(1000), Optional.of(gas));
        double perTonne = 1000
                * DerivedFigures.of(design, 3, 10, -10).methaneNm3PerDay()
                / gas.methaneFraction()
                / waste.volatileSolidsKgPerDay();
        sheet.table(Provenance.SEEN).value("biogas per tonne of volatile solids, m3", 642, perTonne, 128);
    }
}
