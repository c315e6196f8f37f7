package org.warmvat.network;

/**
 * Linear nodes in a row between the slurry or a room and what is outside, with a film at the outer end: a wall, lid or floor.
 * The meter counts the heat that the outermost node receives from outside, J.
 *
 * @param inside node inside of it: the slurry or a room
 * @param first its innermost node; the others follow
 * @param capacitiesJPerK heat capacities from inside to outside; read only
 * @param linksWPerK conductances between each node and the one inside of it; read only
 * @param face the outer end
 */
@SuppressWarnings("ArrayRecordComponent") // read only; asked in every step
public record Chain(int inside, int first, double[] capacitiesJPerK, double[] linksWPerK, Face face) {

    /**
     * The outer end of a chain.
     *
     * @param halfKPerW resistance between the outermost node and the face, K/W
     * @param areaM2 area of the face, m2
     * @param film the film on it
     * @param outside node that it meets: a known temperature or a room
     * @param meter meter of the heat received
     */
    public record Face(double halfKPerW, double areaM2, Film film, int outside, int meter) {

        /** Conductance from the outermost node to what is outside at a surface coefficient, W/K. */
        public double wPerK(double filmWPerM2K) {
            return 1 / (halfKPerW + 1 / (filmWPerM2K * areaM2));
        }
    }

    /** How many nodes. */
    public int size() {
        return capacitiesJPerK.length;
    }

    /** Heat capacity of a node counted from inside, J/K. */
    public double capacityJPerK(int layer) {
        return capacitiesJPerK[layer];
    }

    /** Conductance between a node counted from inside and the one inside of it, W/K. */
    public double linkWPerK(int layer) {
        return linksWPerK[layer];
    }

    /** Conductance from the outermost node to what is outside, with the film as it stands, W/K. */
    public double outerWPerK() {
        return face.wPerK(face.film().wPerM2K());
    }
}
