package org.warmvat.question.fit;

import org.warmvat.design.Design;

/** How a tank would go along one stretch of a log. */
@FunctionalInterface
interface Along {

    /**
     * The slurry's temperature at the stretch's readings.
     *
     * @param design the tank
     * @param startC temperature at the first reading, °C
     */
    double[] slurryC(Design design, double startC);
}
