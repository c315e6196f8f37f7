package org.warmvat.cli.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.warmvat.account.Period;
import org.warmvat.cli.words.Words;
import org.warmvat.gas.GasPart;
import org.warmvat.question.GasRange;
import org.warmvat.tank.KeyFigures;

/** Net energy with low, middle and high gas, its sign in words for all three (equation 19.4). */
public final class GasWords {

    private static final List<String> NAMES = List.of("low", "middle", "high");

    private GasWords() {}

    /**
     * The signs in one clause: {@code positive with low, middle and high gas}, {@code negative with low gas, positive with middle and
     * high gas}.
     */
    public static String signs(double low, double middle, double high) {
        List<String> signs = List.of(sign(low), sign(middle), sign(high));
        List<String> clauses = new ArrayList<>();
        for (int from = 0; from < signs.size(); ) {
            int to = from;
            while (to < signs.size() && signs.get(to).equals(signs.get(from))) {
                to++;
            }
            clauses.add(signs.get(from) + " with " + Words.list(NAMES.subList(from, to)) + " gas");
            from = to;
        }
        return String.join(", ", clauses);
    }

    /** The signs with what they are the signs of: {@code positive with low, middle and high gas: about 830, 1470 and 2060 kWh}. */
    public static String three(double low, double middle, double high) {
        return signs(low, middle, high) + ": about "
                + Words.list(List.of(Words.number(low), Words.number(middle), Words.kWh(high)));
    }

    /** The same of a run. */
    public static String three(GasRange.Ends ends, Period run) {
        return three(ends.low().leadingKWh(), leadingKWh(run), ends.high().leadingKWh());
    }

    /** What a verdict leads with: useful net energy where uses of gas are given, else net energy. */
    public static double leadingKWh(Period run) {
        return run.of(run.has(KeyFigures.USEFUL_NET) ? KeyFigures.USEFUL_NET : KeyFigures.NET);
    }

    private static String sign(double kWh) {
        return kWh > 0 ? "positive" : kWh < 0 ? "negative" : "nil";
    }

    /** Whether a tank gives back what it takes, in sentences of a verdict. */
    public static String verdict(double low, double middle, double high) {
        if (low > 0) {
            return "It returns more energy than it takes, with low, middle and high gas.";
        }
        if (high < 0) {
            return "It takes more energy than it returns, with low, middle and high gas.";
        }
        return "Its net energy is " + signs(low, middle, high) + ".";
    }

    /** The three lines. */
    public static Table table(GasRange range, Period run) {
        List<List<String>> rows = new ArrayList<>();
        GasRange.Ends ends = range.whole();
        row(rows, "low", ends.low().gasKWh(), ends.low().netKWh());
        row(rows, "middle", run.of(GasPart.GAS_ENERGY), run.of(KeyFigures.NET));
        row(rows, "high", ends.high().gasKWh(), ends.high().netKWh());
        return new Table(
                "Net energy with low, middle and high gas",
                List.of("gas", "gas energy, kWh", "net energy, kWh", "net energy is"),
                rows);
    }

    private static void row(List<List<String>> rows, String name, double gasKWh, double netKWh) {
        rows.add(List.of(name, Words.number(gasKWh), Words.number(netKWh), sign(netKWh)));
    }

    /** How low and high were got. */
    public static String how(GasRange range) {
        return "Low and high gas are those of the feedstocks' own ranges; a number that states none is taken a fifth off in"
                + " methane potential and two fifths in rate. "
                + (range.ownRuns()
                        ? "Since own gas or a holder makes heat hang on gas, low and high were run for themselves."
                        : "Their gas is summed anew along the temperatures of the run; what is bought stays.");
    }

    /** Figures of {@code summary.json}. */
    public static Map<String, Object> figures(GasRange.Ends ends) {
        return Draft.row(
                "gas_energy_low_kwh", ends.low().gasKWh(),
                "gas_energy_high_kwh", ends.high().gasKWh(),
                "net_energy_low_gas_kwh", ends.low().netKWh(),
                "net_energy_high_gas_kwh", ends.high().netKWh());
    }
}
