package org.warmvat.design;

import java.util.List;

/**
 * What stands between contents and surroundings. Layers run from inside to outside.
 *
 * @param wall layers of the upright wall, wet and dry stretch alike; at least one
 * @param lid layers of the lid; at least one
 * @param floor layers of the floor; at least one
 * @param outerFace absorptance and emissivity of the outermost face
 * @param films surface coefficients
 * @param rules conventions of nodes and edges
 */
public record Envelope(
        List<Layer> wall, List<Layer> lid, List<Layer> floor, OuterFace outerFace, Films films, EnvelopeRules rules) {

    /** Refuses a part without layers. */
    public Envelope {
        wall = Ranges.someOf("wall", wall);
        lid = Ranges.someOf("lid", lid);
        floor = Ranges.someOf("floor", floor);
    }
}
