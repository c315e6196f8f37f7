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
import org.warmvat.design.tank.Shape;
import org.warmvat.design.tank.Tank;
import org.warmvat.envelope.LayerChain;
import org.warmvat.tank.DerivedFigures;

/**
 * Published: Metcalf and Eddy, Wastewater Engineering, "Estimation of digester heating requirements" (3rd ed. example 12-9).
 * From memory, inputs and answers. Conditions: 18 m across, 6 m at the side, floor a cone of 268.2 m2, contents 32 °C.
 * Tolerance: half the last printed digit; 0.4 % with feed, whose water has 4186 here and 4200 J/kgK there.
 */
class DigesterHeatingMetcalfEddyTest implements Published {

    private static final double DAY_S = 86_400;
    private static final double UNIT = 1e8;
    private static final double INSIDE_C = 32;
    private static final double VOLUME_M3 = 1781;
    private static final Tank TANK =
            new Tank(new Shape.UprightCylinder(18), 6, 0.5, StandsOn.GROUND, new Place.Indoors(10));

    @Override
    public Source source() {
        return new Source(
                Topic.DIGESTERS,
                "Metcalf and Eddy",
                "Metcalf & Eddy, Wastewater Engineering, 3rd ed. 1991 example 12-9, 4th ed. 2003 example 14-6.",
                "18 m across, 6 m at the side, cone floor of 268.2 m2 (1781 m3); walls 0.68, floor 0.85, roof 0.91 W/m2K against 0, 5"
                        + " and -5 °C; contents 32 °C; 45 000 kg/d of feed at 10 °C.",
                "Half the last printed digit; 0.4 % for the feed, whose water has 4186 J/kgK here and 4200 there.");
    }

    private static double wattsLost(double areaM2, double u, double outsideC) {
        LayerChain chain = LayerChain.plane(List.of(Chains.layer(0.1, 0.1 * u)), areaM2, Chains.RULES);
        return new Chains.Wall(chain, Chains.NO_FILM, Chains.NO_FILM).watts(INSIDE_C, outsideC);
    }

    private static double feedW() {
        Feed feed = Designs.feed(
                new FeedTemperature.Fixed(10),
                new Feedstock(
                        Optional.empty(),
                        "sludge",
                        45_000,
                        0,
                        0,
                        MethanePotential.ofNumber(0.3),
                        DigestionRate.ofNumber(0.1)));
        Design design = Designs.of(TANK, Designs.bare(), feed, Designs.water(1000), Optional.empty());
        double atSetpoint = DerivedFigures.of(design, 0, 10, 10).coldFeedW();
        return atSetpoint * (INSIDE_C - 10) / (design.control().setpointC() - 10);
    }

    @Override
    public void fill(Sheet sheet) {
        double wall = wattsLost(TANK.innerPerimeterM() * TANK.liquidDepthM(), 0.68, 0);
        double floor = wattsLost(268.2, 0.85, 5);
        double roof = wattsLost(TANK.innerPlanAreaM2(), 0.91, -5);
        double losses = wall + floor + roof;
        double feed = feedW();
        sheet.table(Provenance.MEMORY)
                .value("walls, 1e8 J/d", 6.38, wall * DAY_S / UNIT, 0.005)
                .value("floor, 1e8 J/d", 5.32, floor * DAY_S / UNIT, 0.005)
                .value("roof, 1e8 J/d", 7.40, roof * DAY_S / UNIT, 0.005)
                .value("all losses, 1e8 J/d", 19.1, losses * DAY_S / UNIT, 0.05)
                .value("feed, 1e8 J/d", 41.6, feed * DAY_S / UNIT, 0.17);
        double capacity =
                VOLUME_M3 * Designs.of(TANK, Designs.bare()).contentsHeatCapacityJPerK() / TANK.liquidVolumeM3();
        Vessel cooling = new Vessel(capacity, INSIDE_C, (timeS, celsius) -> -losses - feed);
        sheet.table(Provenance.MEMORY)
                .value("fall in a day without heat, feed going on, K", 0.81, INSIDE_C - cooling.afterS(DAY_S), 0.005);
    }
}
