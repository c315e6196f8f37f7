package org.warmvat.network;

/** A rate known beforehand, constant between its jumps, such as one that was measured. Times are seconds since the weather began. */
public interface KnownRate {

    /** Nothing at any time. */
    KnownRate NONE = new KnownRate() {
        @Override
        public double at(double timeS) {
            return 0;
        }

        @Override
        public double nextJumpS(double timeS) {
            return Double.POSITIVE_INFINITY;
        }
    };

    /** The rate at a time that lies on no jump. */
    double at(double timeS);

    /** The next jump strictly after a time; infinite after the last. */
    double nextJumpS(double timeS);
}
