package org.warmvat.question;

import java.util.List;
import java.util.OptionalDouble;
import org.warmvat.account.Period;
import org.warmvat.gas.GasPart;
import org.warmvat.tank.KeyFigures;

/**
 * What a run gives where all feedstocks are poor, and where all are rich (equation 19.4); the middle is the run itself.
 *
 * @param whole over the whole run
 * @param months calendar months in order, none where months were not kept
 * @param ownRuns whether low and high were run for themselves, since own gas or a holder makes heat and gas depend on each other;
 *     else gas is summed anew along the temperatures of the run, and what is bought stays
 */
public record GasRange(Ends whole, List<Ends> months, boolean ownRuns) {

    /**
     * Both ends.
     *
     * @param low all feedstocks with low potential and low rate
     * @param high all with high ones
     */
    public record Ends(Yield low, Yield high) {}

    /**
     * One end.
     *
     * @param gasKWh energy of the gas made
     * @param netKWh net energy
     * @param usefulKWh useful net energy, where uses of gas are given
     */
    public record Yield(double gasKWh, double netKWh, OptionalDouble usefulKWh) {

        static Yield of(Period period) {
            return new Yield(
                    period.of(GasPart.GAS_ENERGY),
                    period.of(KeyFigures.NET),
                    period.has(KeyFigures.USEFUL_NET)
                            ? OptionalDouble.of(period.of(KeyFigures.USEFUL_NET))
                            : OptionalDouble.empty());
        }

        /** A period with other gas and everything else as it was. */
        static Yield withGas(Period period, double gasKWh) {
            return new Yield(
                    gasKWh, period.of(KeyFigures.NET) - period.of(GasPart.GAS_ENERGY) + gasKWh, OptionalDouble.empty());
        }

        /** What the verdict leads with: useful net energy where uses are given, else net energy. */
        public double leadingKWh() {
            return usefulKWh.orElse(netKWh);
        }
    }

    /** Takes the list as it is. */
    public GasRange {
        months = List.copyOf(months);
    }
}
