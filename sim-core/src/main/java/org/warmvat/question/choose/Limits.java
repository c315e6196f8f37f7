package org.warmvat.question.choose;

import java.util.OptionalDouble;

/**
 * What a design must keep to, in every weather file; each may be absent.
 *
 * @param hoursBelowMinimum most hours below the minimum temperature
 * @param warmUpDays days within which a fill of {@link #FILL_C} is at the set-point, from the beginning of the file's coldest week
 * @param netLeastKWh least net energy of a file, kWh
 * @param netLeastMonthKWh least net energy of each of its months, kWh
 * @param budget most that may be spent on buying
 */
public record Limits(
        OptionalDouble hoursBelowMinimum,
        OptionalDouble warmUpDays,
        OptionalDouble netLeastKWh,
        OptionalDouble netLeastMonthKWh,
        OptionalDouble budget) {

    /** Temperature of the fill that is warmed up, °C. */
    public static final double FILL_C = 10;
}
