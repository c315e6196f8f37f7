package org.warmvat.network;

/** Surface coefficient between the outside face of a chain and what it meets; several faces may share one. */
public final class Film {

    private double wPerM2K;

    /** A film with a coefficient to begin with, W/(m2 K); infinite without any resistance. */
    public Film(double wPerM2K) {
        this.wPerM2K = wPerM2K;
    }

    /** Surface coefficient, W/(m2 K). */
    public double wPerM2K() {
        return wPerM2K;
    }

    /** Changes the coefficient, W/(m2 K). */
    public void set(double coefficientWPerM2K) {
        wPerM2K = coefficientWPerM2K;
    }
}
