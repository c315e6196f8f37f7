package org.warmvat.design.surroundings;

/** How open a tank out of doors stands to wind and sky. */
public enum Exposure {
    /** In the open. */
    OPEN(0.7),
    /** Sheltered by buildings, hedges or walls. */
    SHELTERED(0.4),
    /** Under a roof without walls: neither sun nor sky. */
    UNDER_ROOF(0.25);

    private final double usualWindFactor;

    Exposure(double usualWindFactor) {
        this.usualWindFactor = usualWindFactor;
    }

    /** Wind at the tank over wind at 10 m, as usually taken (model page, equation 2.4). */
    public double usualWindFactor() {
        return usualWindFactor;
    }

    /** Whether wall and lid see sun and sky. */
    public boolean seesSky() {
        return this != UNDER_ROOF;
    }
}
