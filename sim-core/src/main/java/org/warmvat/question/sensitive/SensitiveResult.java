package org.warmvat.question.sensitive;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * What a year becomes with numbers that are not known well lower and higher.
 *
 * @param useful whether net energy is useful net energy, since uses of gas are given
 * @param base with all of them as taken
 * @param entries the numbers, that on which the answer hangs most first
 */
public record SensitiveResult(boolean useful, Figures base, List<Entry> entries) {

    /**
     * What a year tells.
     *
     * @param netKWh net energy, useful net energy where uses of gas are given; empty where no gas is computed
     * @param takenKWh energy bought for heat and all electricity
     * @param shortHours hours below the minimum
     * @param meanC mean slurry temperature
     */
    public record Figures(OptionalDouble netKWh, double takenKWh, double shortHours, double meanC) {}

    /**
     * A number moved.
     *
     * @param values what it was moved to, by path
     * @param held whether a range or another number kept it from going all the way
     * @param figures the year
     */
    public record End(Map<String, Double> values, boolean held, Figures figures) {}

    /**
     * A number.
     *
     * @param number which
     * @param taken what was taken, by path
     * @param low the year with less of it
     * @param high the year with more of it
     */
    public record Entry(Doubtful number, Map<String, Double> taken, End low, End high) {

        /** How far the answer swings: net energy, or without gas what is taken, kWh; without either the mean temperature, K. */
        double swing() {
            Figures lower = low.figures();
            Figures higher = high.figures();
            if (lower.netKWh().isPresent()) {
                return Math.abs(higher.netKWh().getAsDouble() - lower.netKWh().getAsDouble());
            }
            double taken = Math.abs(higher.takenKWh() - lower.takenKWh());
            return taken > 0 ? taken : Math.abs(higher.meanC() - lower.meanC());
        }
    }

    /** Takes the list as it is. */
    public SensitiveResult {
        entries = List.copyOf(entries);
    }
}
