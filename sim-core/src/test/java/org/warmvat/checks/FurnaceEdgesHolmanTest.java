package org.warmvat.checks;

import java.util.List;
import org.warmvat.design.envelope.EnvelopeRules;
import org.warmvat.design.envelope.Layer;
import org.warmvat.design.surroundings.Place;
import org.warmvat.design.surroundings.StandsOn;
import org.warmvat.design.tank.Shape;
import org.warmvat.design.tank.Tank;
import org.warmvat.envelope.Edges;
import org.warmvat.envelope.LayerChain;

/**
 * Published: J. P. Holman, Heat Transfer, example 3-2: cubical furnace of 50 cm inside with walls of 10 cm, by shape factors
 * for walls, twelve edges and eight corners. From memory. Conditions: a box tank of the same size; shape factors do not depend
 * on the conductivity, so a foam stands in for the brick. Tolerance: half the last printed digit. The program leaves out the
 * corners, so the total is not reproduced.
 */
class FurnaceEdgesHolmanTest implements Published {

    private static final double FOAM_W_PER_M_K = 0.03;
    private static final double SIDE_M = 0.5;

    @Override
    public Source source() {
        return new Source(
                Topic.TANKS,
                "Holman",
                "J. P. Holman, Heat Transfer, example 3-2.",
                "Cube of 0.5 m inside, walls 0.1 m; shape factors per conductivity.",
                Source.HALF_DIGIT);
    }

    private static Edges edges(List<Layer> foam) {
        Tank tank = new Tank(new Shape.Box(SIDE_M, SIDE_M, 0), 0.4, SIDE_M - 0.4, StandsOn.LEGS, new Place.Indoors(20));
        return Edges.of(
                Designs.of(tank, Designs.envelope(foam, foam, foam, new EnvelopeRules(0.1, 3, 0.54, false, 0.5))));
    }

    @Override
    public void fill(Sheet sheet) {
        List<Layer> foam = List.of(Chains.layer(0.1, FOAM_W_PER_M_K));
        Edges edges = edges(foam);
        double allEdges = (edges.wetWPerK() + edges.dryWPerK()) / FOAM_W_PER_M_K;
        double face = 1 / LayerChain.plane(foam, SIDE_M * SIDE_M, Chains.RULES).resistanceKPerW() / FOAM_W_PER_M_K;
        sheet.table(Provenance.MEMORY)
                .value("shape factor of one wall, m", 2.5, face, 0.05)
                .value("shape factor of one edge, m", 0.27, allEdges / 12, 0.005)
                .notReproduced(
                        "shape factor of the whole furnace, m",
                        18.36,
                        6 * face + allEdges,
                        0.005,
                        "the program leaves out the eight corners (0.15 d each, 0.7 % here).");
    }
}
