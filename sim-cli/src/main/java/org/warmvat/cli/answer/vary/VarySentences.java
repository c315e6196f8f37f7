package org.warmvat.cli.answer.vary;

import java.util.Arrays;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import org.warmvat.cli.answer.GasWords;
import org.warmvat.cli.words.Numerals;
import org.warmvat.cli.words.Telling;
import org.warmvat.cli.words.Words;
import org.warmvat.question.vary.Outputs;
import org.warmvat.question.vary.Sweep;

/** What a sweep says, in sentences. */
final class VarySentences {

    private static final String NET = "net_energy_kwh";
    private static final String SHORT = "hours_below_floor";

    private final Sweep sweep;
    /** What runs are judged by. */
    private final String leading;

    private final String lowGas;
    private final String highGas;

    VarySentences(Sweep sweep) {
        this.sweep = sweep;
        leading = Outputs.leading(sweep.names());
        String named = leading.replaceFirst("_kwh$", "");
        lowGas = named + "_low_gas_kwh";
        highGas = named + "_high_gas_kwh";
    }

    /** Whether uses of gas are given, so that useful net energy judges the runs. */
    boolean isUsed() {
        return !leading.equals(NET);
    }

    private String net() {
        return isUsed() ? "useful net energy" : "net energy";
    }

    /** What belongs beside the verdict. */
    List<String> but() {
        return isUsed() && SweepDrawing.hasNumbers(sweep, lowGas)
                ? List.of(
                        "Runs are judged by what the gas is used for; net energy, which stands beside it, counts all gas made,"
                                + " surplus included, and is no return.")
                : List.of();
    }

    List<String> varied(String shown) {
        return new Telling()
                .say(sweep.runs() + (sweep.runs() == 1 ? " design was run" : " designs were run")
                        + " through the whole weather file: "
                        + Words.list(IntStream.range(0, sweep.keys().size())
                                .mapToObj(this::axis)
                                .toList()) + ".")
                .when(
                        !SweepDrawing.hasNumbers(sweep, shown),
                        "No picture is drawn of " + shown
                                + ", which means nothing for these designs; --show names another.")
                .done();
    }

    private String axis(int axis) {
        DoubleSummaryStatistics values =
                sweep.values().stream().mapToDouble(v -> v[axis]).summaryStatistics();
        String least = Numerals.exact(values.getMin());
        return sweep.keys().get(axis)
                + (values.getMin() == values.getMax()
                        ? " at " + least
                        : " from " + least + " to " + Numerals.exact(values.getMax()) + " (" + sweep.counts()[axis]
                                + " values)");
    }

    List<String> best() {
        int best = most(leading, run -> true).orElseThrow();
        int worst = most(leading, run -> true, -1).orElseThrow();
        boolean one = sweep.runs() == 1;
        if (Double.isNaN(sweep.output(best, lowGas))) {
            String which = one ? "this design" : "these designs";
            return List.of("No gas is computed for " + which + ", so that net energy cannot be judged.", warmest());
        }
        if (kWh(best).equals(kWh(worst))) {
            String where = one ? "" : " in every run, to three figures";
            return List.of("The " + net() + " is " + kWh(best) + where + "; it is " + three(best) + ".", warmest());
        }
        return apart(best, worst);
    }

    private List<String> apart(int best, int worst) {
        Optional<Integer> warm = most(leading, run -> sweep.output(run, SHORT) == 0);
        return new Telling()
                .say("The highest " + net() + " is " + at(best) + "; it is " + three(best) + "; there the tank is "
                        + hours(best) + " below its minimum.")
                .when(warm.isEmpty(), this::warmest)
                .say(warm.filter(run -> run != best)
                        .map(run -> "Of those never below their minimum the highest is " + at(run) + "; it is "
                                + three(run) + "."))
                .say("The lowest " + net() + " is " + at(worst) + ".")
                .done();
    }

    private String kWh(int run) {
        return Words.kWh(sweep.output(run, leading));
    }

    private String at(int run) {
        return kWh(run) + beside(run) + ", at " + sweep.named(run);
    }

    /** Net energy where another figure leads. */
    private String beside(int run) {
        return isUsed() ? " (net energy " + Words.kWh(sweep.output(run, NET)) + ")" : "";
    }

    private String three(int run) {
        return GasWords.three(sweep.output(run, lowGas), sweep.output(run, leading), sweep.output(run, highGas));
    }

    /** How the runs stand to their minimum, by the one that is short for the fewest hours. */
    private String warmest() {
        int least = IntStream.range(0, sweep.runs())
                .boxed()
                .reduce((a, b) -> sweep.output(b, SHORT) < sweep.output(a, SHORT) ? b : a)
                .orElseThrow();
        double[] hours = sweep.output(SHORT);
        if (sweep.runs() == 1) {
            return "The tank is " + hours(least) + " below its minimum.";
        }
        if (hours(least).equals(hours(Arrays.stream(hours).max().orElseThrow()))) {
            return "Each run is " + hours(least) + " below its minimum.";
        }
        long warm = Arrays.stream(hours).filter(one -> one == 0).count();
        return warm > 0
                ? warm + " of the " + sweep.runs() + " runs are never below their minimum."
                : "None stays above its minimum all the time; the fewest hours short, " + Words.hours(hours[least])
                        + ", are at " + sweep.named(least) + ".";
    }

    private String hours(int run) {
        return hours(sweep.output(run, SHORT));
    }

    private static String hours(double hours) {
        return hours == 0 ? "never" : Words.hours(hours) + " hours";
    }

    private Optional<Integer> most(String output, IntPredicate those) {
        return most(output, those, 1);
    }

    /** The first of the best, so that equal ones do not depend on their number. */
    private Optional<Integer> most(String output, IntPredicate those, int sign) {
        return IntStream.range(0, sweep.runs())
                .filter(those)
                .boxed()
                .reduce((a, b) -> sign * sweep.output(b, output) > sign * sweep.output(a, output) ? b : a);
    }

    /** What the set-point does beside heat; none where it is not varied. */
    List<String> setpoint() {
        int axis = sweep.keys().indexOf("control.setpoint_c");
        if (axis < 0) {
            return List.of();
        }
        Map<Double, Integer> firsts = new TreeMap<>();
        IntStream.range(0, sweep.runs())
                .forEach(run -> firsts.putIfAbsent(sweep.values().get(run)[axis], run));
        return new Telling()
                .each(firsts.entrySet(), one -> at(one.getKey(), one.getValue()))
                .say("A cool tank of the same size looks good until the bigger tank that it needs is counted.")
                .done();
    }

    private String at(double setpointC, int run) {
        return "At " + Words.celsius(setpointC) + " each cubic metre is fed "
                + Words.number(sweep.output(run, "loading_kg_vs_m3_day"))
                + " kg of volatile solids a day and keeps it "
                + Words.number(sweep.output(run, "retention_days")) + " days; "
                + equalGas(sweep.output(run, "volume_for_equal_gas_l")) + ".";
    }

    private static String equalGas(double litres) {
        if (Double.isNaN(litres)) {
            return "no gas is computed";
        }
        return Double.isInfinite(litres)
                ? "no tank of any size would make as much gas as this one at its own set-point"
                : "a tank of " + Words.number(litres)
                        + " litres would make as much gas at steady state as this one at its" + " own set-point";
    }
}
