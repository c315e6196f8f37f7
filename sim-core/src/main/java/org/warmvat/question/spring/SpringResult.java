package org.warmvat.question.spring;

import java.time.MonthDay;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.warmvat.network.Warning;
import org.warmvat.question.GasRange;

/**
 * What becomes of a cold tank by the date of its start.
 *
 * @param starts in the order asked
 */
public record SpringResult(List<Start> starts) {

    /**
     * A start.
     *
     * @param date when
     * @param daysSun days until the set-point is reached by the sun alone; empty where it is not within 365 days
     * @param daysBackup the same with everything the design has
     * @param heatKWh heat of sun and backup until then; empty where it is not reached
     * @param boughtKWh energy bought for the backup until then
     * @param netKWh net energy of the 365 days from the start, useful net energy where uses of gas are given
     * @param gas the same with low and high gas; empty where no gas is computed
     * @param warnings of the year with everything
     */
    public record Start(
            MonthDay date,
            OptionalDouble daysSun,
            OptionalDouble daysBackup,
            OptionalDouble heatKWh,
            OptionalDouble boughtKWh,
            double netKWh,
            Optional<GasRange.Ends> gas,
            List<Warning> warnings) {

        /** Whether the year gives more than it takes, the heat to start included. */
        public boolean paysBack() {
            return netKWh > 0;
        }
    }

    /** Takes the list as it is. */
    public SpringResult {
        starts = List.copyOf(starts);
    }

    /** The first start of the list that pays back within its year. */
    public Optional<Start> earliestThatPays() {
        return starts.stream().filter(Start::paysBack).findFirst();
    }
}
