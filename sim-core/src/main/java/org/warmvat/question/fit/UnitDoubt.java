package org.warmvat.question.fit;

import java.util.Arrays;
import java.util.Optional;
import org.apache.commons.math3.stat.descriptive.rank.Median;
import org.warmvat.design.Design;
import org.warmvat.design.surroundings.Place;
import org.warmvat.log.Log;
import org.warmvat.log.LogColumn;

/**
 * Temperatures of a log that make sense as degrees Fahrenheit only.
 *
 * @param slurry whether the slurry's do
 * @param air whether the air's do
 */
public record UnitDoubt(boolean slurry, boolean air) {

    /** No digester is hotter. */
    private static final double HOTTEST_C = 62;

    private static final double USUAL_AIR_C = 15;
    private static final double CLEARLY_K = 10;

    static UnitDoubt of(Design design, Log log, Optional<FileAlong> file) {
        double slurryC = new Median().evaluate(log.slurryC().values());
        boolean outdoors = !(design.tank().place() instanceof Place.Indoors);
        double usualC = file.map(along -> Arrays.stream(along.line(along.file().airC()::at))
                        .average()
                        .orElse(USUAL_AIR_C))
                .orElse(USUAL_AIR_C);
        boolean air = outdoors
                && log.readings(LogColumn.AIR)
                        .filter(line -> isFahrenheit(new Median().evaluate(line.values()), usualC))
                        .isPresent();
        return new UnitDoubt(
                slurryC > HOTTEST_C && isFahrenheit(slurryC, design.control().setpointC()), air);
    }

    private static boolean isFahrenheit(double value, double expectedC) {
        double celsius = (value - 32) / 1.8;
        return Math.abs(celsius - expectedC) + CLEARLY_K < Math.abs(value - expectedC);
    }

    /** Whether anything is in doubt. */
    public boolean any() {
        return slurry || air;
    }
}
