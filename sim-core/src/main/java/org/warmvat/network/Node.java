package org.warmvat.network;

/**
 * A temperature of the network.
 *
 * @param name its name; the layers of a chain share one
 * @param kind what moves it
 * @param capacityJPerK heat capacity; 0 for a room without mass and for a known temperature
 * @param initialC temperature at the start, °C
 */
public record Node(String name, Kind kind, double capacityJPerK, double initialC) {

    /** What moves a node's temperature. */
    public enum Kind {
        /** The contents of the tank, to which everything is joined; the first node. */
        SLURRY,
        /** A body with capacity whose link to the slurry a switch opens and closes. */
        CIRCUIT,
        /** What chains, exchanges and the slurry meet in: a gas space without mass, the air of a shelter with some. */
        ROOM,
        /** A sub-node of a chain. */
        LAYER,
        /** Prescribed by the weather or the design; holds no heat. */
        KNOWN
    }

    /** Refuses a capacity that does not go with the kind. */
    public Node {
        boolean massless = kind == Kind.KNOWN || (kind == Kind.ROOM && capacityJPerK == 0);
        if (!(massless ? capacityJPerK == 0 : capacityJPerK > 0 && capacityJPerK < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("node " + name + ": heat capacity " + capacityJPerK
                    + " J/K, expected a number above 0, or 0 for a room without mass or a known temperature");
        }
    }

    /** Whether it is a room whose temperature follows at once from what it meets. */
    public boolean isMassless() {
        return kind == Kind.ROOM && capacityJPerK == 0;
    }
}
