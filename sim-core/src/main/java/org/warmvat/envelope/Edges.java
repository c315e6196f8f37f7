package org.warmvat.envelope;

import java.util.Optional;
import org.warmvat.design.Design;
import org.warmvat.design.envelope.EnvelopeRules;
import org.warmvat.design.envelope.Layer;
import org.warmvat.design.tank.Shape;
import org.warmvat.design.tank.Tank;

/**
 * Edges where the foam of two adjoining walls meets: conductances beside the layers (equation 2.8; shape factor of two
 * adjoining walls: Incropera and others, Fundamentals of Heat and Mass Transfer, table 4.1).
 *
 * @param wetWPerK from the slurry to the wall's surroundings: floor edge and the wet stretch of a box's upright corners
 * @param dryWPerK from the headspace: lid edge and the dry stretch of the corners
 */
public record Edges(double wetWPerK, double dryWPerK) {

    private static final int BOX_CORNERS = 4;

    /** The edges of a design. */
    public static Edges of(Design design) {
        EnvelopeRules rules = design.envelope().rules();
        Tank tank = design.tank();
        Optional<Layer> foam = rules.mainInsulation(design.envelope().wall());
        if (foam.isEmpty()) {
            return new Edges(0, 0);
        }
        double perMetre = rules.edgeShapeFactor() * foam.get().material().conductivityWPerMK();
        int corners = tank.shape() instanceof Shape.Box ? BOX_CORNERS : 0;
        double rim = perMetre * tank.innerPerimeterM();
        boolean floor = rules.mainInsulation(design.envelope().floor()).isPresent();
        boolean lid = rules.mainInsulation(design.envelope().lid()).isPresent();
        return new Edges(
                (floor ? rim : 0) + corners * perMetre * tank.liquidDepthM(),
                (lid ? rim : 0) + corners * perMetre * tank.headspaceHeightM());
    }
}
