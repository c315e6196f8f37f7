package org.warmvat.question.spread;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.warmvat.network.Warning;
import org.warmvat.sampling.Quantiles;
import org.warmvat.sampling.Share;
import org.warmvat.sampling.SobolIndices;

/**
 * How far the answer may lie.
 *
 * @param inputs what was drawn
 * @param years names of the years
 * @param leading column of the figure that the answer turns on
 * @param draws the draws, in order
 * @param figures the year's figures by their columns
 * @param chances how often what matters held
 * @param influences from which inputs the spread of the leading figure comes, the largest total first
 * @param daysC mean slurry temperature of each day of the year, of 365; not a number where no draw has the day
 * @param runs how many runs it took
 * @param warnings of each kind that of the draw that had most of it
 */
public record SpreadResult(
        List<Uncertain> inputs,
        List<String> years,
        String leading,
        List<Draw> draws,
        Map<String, Quantiles> figures,
        Chances chances,
        List<Influence> influences,
        List<Quantiles> daysC,
        int runs,
        List<Warning> warnings) {

    /** The year as an input. */
    public static final String YEAR = "weather.year";

    /**
     * One draw.
     *
     * @param year its year, counted from 0
     * @param values what was drawn for each input: the number, or the factor where it is one, before it was held
     * @param held whether the input was held at an end of its key's range
     * @param figures its figures, in the order of the columns
     * @param lowGas the leading figure with all feedstocks at their low potential and rate; not a number without gas
     * @param middleGas the same at those of the design
     * @param highGas the same at the high ones
     */
    public record Draw(
            int year,
            double[] values,
            boolean[] held,
            double[] figures,
            double lowGas,
            double middleGas,
            double highGas) {}

    /**
     * Shares of the draws, each with its sampling error.
     *
     * @param positive of the leading figure above 0, absent without gas
     * @param neverShort of no hour short
     */
    public record Chances(Optional<ByGas> positive, Share neverShort) {}

    /**
     * A share by how much gas the feed gives.
     *
     * @param low at low potential and rate of all feedstocks
     * @param middle at those of the design
     * @param high at high ones
     */
    public record ByGas(Share low, Share middle, Share high) {}

    /**
     * Of one input.
     *
     * @param key the input
     * @param indices its shares of the variance
     */
    public record Influence(String key, SobolIndices indices) {}

    /** The column of a figure among those of the draws. */
    public double[] column(String name) {
        int index = List.copyOf(figures.keySet()).indexOf(name);
        return draws.stream().mapToDouble(draw -> draw.figures()[index]).toArray();
    }

    /** How many draws of an input were held at an end of its key's range. */
    public int held(int input) {
        return (int) draws.stream().filter(draw -> draw.held()[input]).count();
    }
}
