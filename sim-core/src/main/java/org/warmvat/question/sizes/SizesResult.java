package org.warmvat.question.sizes;

import java.util.List;
import java.util.Optional;
import org.warmvat.network.Warning;
import org.warmvat.question.vary.Outputs;

/**
 * A design at several sizes.
 *
 * @param rules how its numbers scale
 * @param sizes the sizes asked for, the smallest first
 * @param drawn these and those at which what judges them turns positive: straight lines between the sizes asked for would cross nothing
 *     elsewhere
 * @param positiveFromL volume from which the net energy of the run, useful net energy where uses of gas are given, is above nothing,
 *     litres; empty where it is so from the smallest size on or nowhere
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

        /** Whether uses of gas are given, so that useful net energy judges it. */
        public boolean isUsed() {
            return names.contains("useful_net_energy_kwh");
        }

        /** Net energy, kWh. */
        public double netKWh() {
            return output("net_energy_kwh");
        }

        /** What judges it: useful net energy where uses of gas are given, else net energy, kWh. */
        public double leadingKWh() {
            return output(Outputs.leading(names));
        }

        /** The same of the worst month, kWh. */
        public double worstMonthKWh() {
            return output(isUsed() ? "worst_month_useful_net_kwh" : "worst_month_net_kwh");
        }
    }
}
