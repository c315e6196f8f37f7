package org.warmvat.cli.answer.vary;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import org.warmvat.cli.answer.GasWords;
import org.warmvat.cli.words.Numerals;
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
        List<String> axes = new ArrayList<>();
        for (int i = 0; i < sweep.keys().size(); i++) {
            int axis = i;
            double least =
                    sweep.values().stream().mapToDouble(v -> v[axis]).min().orElseThrow();
            double most =
                    sweep.values().stream().mapToDouble(v -> v[axis]).max().orElseThrow();
            axes.add(sweep.keys().get(i)
                    + (least == most
                            ? " at " + Numerals.exact(least)
                            : " from " + Numerals.exact(least) + " to " + Numerals.exact(most) + " ("
                                    + sweep.counts()[i] + " values)"));
        }
        List<String> sentences = new ArrayList<>();
        sentences.add(sweep.runs() + (sweep.runs() == 1 ? " design was run" : " designs were run")
                + " through the whole weather file: " + Words.list(axes) + ".");
        if (!SweepDrawing.hasNumbers(sweep, shown)) {
            sentences.add("No picture is drawn of " + shown
                    + ", which means nothing for these designs; --show names another.");
        }
        return sentences;
    }

    List<String> best() {
        List<String> sentences = new ArrayList<>();
        int best = most(leading, run -> true).orElseThrow();
        int worst = most(leading, run -> true, -1).orElseThrow();
        if (Double.isNaN(sweep.output(best, lowGas))) {
            return List.of(
                    "No gas is computed for "
                            + (sweep.runs() == 1 ? "this design" : "these designs")
                            + ", so that net energy cannot be judged.",
                    warmest());
        }
        boolean alike = Words.kWh(sweep.output(best, leading)).equals(Words.kWh(sweep.output(worst, leading)));
        if (alike) {
            sentences.add("The " + net() + " is " + Words.kWh(sweep.output(best, leading))
                    + (sweep.runs() == 1 ? "" : " in every run, to three figures") + "; it is " + three(best) + ".");
            sentences.add(warmest());
            return sentences;
        }
        sentences.add("The highest " + net() + " is " + Words.kWh(sweep.output(best, leading)) + beside(best) + ", at "
                + sweep.named(best) + "; it is " + three(best) + "; there the tank is " + hours(best)
                + " below its minimum.");
        Optional<Integer> warm = most(leading, run -> sweep.output(run, SHORT) == 0);
        if (warm.isEmpty()) {
            sentences.add(warmest());
        } else if (warm.get() != best) {
            sentences.add("Of those never below their minimum the highest is "
                    + Words.kWh(sweep.output(warm.get(), leading)) + beside(warm.get()) + ", at "
                    + sweep.named(warm.get()) + "; it is "
                    + three(warm.get()) + ".");
        }
        sentences.add("The lowest " + net() + " is " + Words.kWh(sweep.output(worst, leading)) + beside(worst) + ", at "
                + sweep.named(worst) + ".");
        return sentences;
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
        long warm = IntStream.range(0, sweep.runs())
                .filter(run -> sweep.output(run, SHORT) == 0)
                .count();
        if (sweep.runs() == 1) {
            return "The tank is " + hours(least) + " below its minimum.";
        }
        double mostHours = Arrays.stream(sweep.output(SHORT)).max().orElseThrow();
        if (hours(least).equals(mostHours == 0 ? "never" : Words.hours(mostHours) + " hours")) {
            return "Each run is " + hours(least) + " below its minimum.";
        }
        return warm > 0
                ? warm + " of the " + sweep.runs() + " runs are never below their minimum."
                : "None stays above its minimum all the time; the fewest hours short, "
                        + Words.hours(sweep.output(least, SHORT)) + ", are at " + sweep.named(least) + ".";
    }

    private String hours(int run) {
        double hours = sweep.output(run, SHORT);
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
        List<String> sentences = new ArrayList<>();
        for (double setpoint : sweep.values().stream()
                .mapToDouble(v -> v[axis])
                .distinct()
                .sorted()
                .toArray()) {
            int run = IntStream.range(0, sweep.runs())
                    .filter(r -> sweep.values().get(r)[axis] == setpoint)
                    .findFirst()
                    .orElseThrow();
            sentences.add("At " + Words.celsius(setpoint) + " each cubic metre is fed "
                    + Words.number(sweep.output(run, "loading_kg_vs_m3_day"))
                    + " kg of volatile solids a day and keeps it "
                    + Words.number(sweep.output(run, "retention_days")) + " days; "
                    + equalGas(sweep.output(run, "volume_for_equal_gas_l")) + ".");
        }
        sentences.add("A cool tank of the same size looks good until the bigger tank that it needs is counted.");
        return sentences;
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
