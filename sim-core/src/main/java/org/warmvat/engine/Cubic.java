package org.warmvat.engine;

/** The cubic through temperatures and rates at both ends of a step. */
final class Cubic {

    private Cubic() {}

    /**
     * Temperature at a share of a step, °C.
     *
     * @param share 0 at the beginning, 1 at the end
     * @param stepS length of the step
     * @param startC temperature at the beginning
     * @param endC temperature at the end
     * @param startKPerS rate at the beginning
     * @param endKPerS rate at the end
     */
    static double at(double share, double stepS, double startC, double endC, double startKPerS, double endKPerS) {
        double rest = 1 - share;
        double rise = endC - startC;
        double bend = rest * (startKPerS * stepS - rise) - share * (endKPerS * stepS - rise);
        return rest * startC + share * endC + share * rest * bend;
    }
}
