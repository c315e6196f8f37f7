package org.warmvat.question.sizes;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.warmvat.design.Design;
import org.warmvat.sample.LifeDesigns;
import org.warmvat.sample.TankPlan;

/** Exact: at eight times the volume a shelter has four times the floor and cover and eight times the air, a holder eight times the gas. */
class ScalingOfLifeBlocksTest {

    private static Design scaled(Design design) {
        double litres = 8 * 1000 * design.tank().liquidVolumeM3();
        return new Scaling(design, List.of()).at(litres, one -> 1);
    }

    private static void assertFactor(double factor, Design drawn, String key) {
        assertEquals(factor * drawn.number(key), scaled(drawn).number(key), 1e-9 * drawn.number(key), key);
    }

    @Test
    void aShelterStaysSimilarRoundItsTank() {
        TankPlan plan = LifeDesigns.all().values().stream()
                .filter(one -> one.shelter.isPresent())
                .findFirst()
                .orElseThrow();
        Design drawn = plan.build();
        assertFactor(2, drawn, "tank.liquid_depth_m");
        assertFactor(4, drawn, "shelter.floor_area_m2");
        assertFactor(4, drawn, "shelter.cover_area_m2");
        assertFactor(4, drawn, "shelter.mass_kj_k");
        assertFactor(8, drawn, "shelter.volume_m3");
        assertFactor(1, drawn, "shelter.air_changes_per_h");
    }

    @Test
    void aHolderFollowsTheGasAndItsUsesDoNot() {
        TankPlan plan = LifeDesigns.all().values().stream()
                .filter(one -> one.gas
                        .filter(gas -> gas.holder().isPresent() && !gas.uses().isEmpty())
                        .isPresent())
                .findFirst()
                .orElseThrow();
        Design drawn = plan.build();
        assertFactor(8, drawn, "gas.holder.useful_m3");
        assertFactor(1, drawn, "gas.uses[0].kw");
        assertFactor(1, drawn, "gas.holder.reserve_share");
    }

    @Test
    void theVesselOfHygienisationLosesByItsArea() {
        TankPlan plan = LifeDesigns.all().values().stream()
                .filter(one -> one.hygienisation
                        .filter(hygienisation -> hygienisation.lossUaWPerK() > 0)
                        .isPresent())
                .findFirst()
                .orElseThrow();
        assertFactor(4, plan.build(), "feed.hygienisation.loss_ua_w_k");
    }
}
