package org.warmvat.question.sizes;

import java.util.List;
import java.util.Optional;
import org.warmvat.network.Warning;

/**
 * A design at several sizes.
 *
 * @param rules how its numbers scale
 * @param sizes the sizes asked for, the smallest first
 * @param drawn these and those at which net energy turns positive: straight lines between the sizes asked for would cross nothing
 *     elsewhere
 * @param positiveFromL volume from which the net energy of the run is above nothing, litres; empty where it is so from the smallest
 *     size on or nowhere
 * @param everyMonthFromL the same for the net energy of every month
 */
public record SizesResult(
        List<ScalingRule> rules,
        List<Size> sizes,
        List<Size> drawn,
        Optional<Double> positiveFromL,
        Optional<Double> everyMonthFromL) {

    /**
     * A size that was run.
     *
     * @param litres volume of the contents
     * @param scaled the scaled numbers in the order of the rules
     * @param names names of the outputs
     * @param outputs in the order of their names
     * @param warnings what its run warns of
     */
    @SuppressWarnings("ArrayRecordComponent") // read only
    public record Size(
            double litres, List<Double> scaled, List<String> names, double[] outputs, List<Warning> warnings) {

        /** An output by its name. */
        public double output(String name) {
            return outputs[names.indexOf(name)];
        }

        /** Net energy, kWh. */
        public double netKWh() {
            return output("net_energy_kwh");
        }

        /** Net energy of the worst month, kWh. */
        public double worstMonthKWh() {
            return output("worst_month_net_kwh");
        }
    }
}
