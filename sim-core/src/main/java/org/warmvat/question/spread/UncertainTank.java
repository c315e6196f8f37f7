package org.warmvat.question.spread;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.warmvat.design.Design;
import org.warmvat.design.ListedMaterials;
import org.warmvat.design.keys.Bounds;
import org.warmvat.design.keys.Numbers;
import org.warmvat.design.keys.Refused;

/** A design with inputs that are not known well, and the tank and weather of each draw of them. */
public final class UncertainTank {

    private static final Bounds AIR_OFFSET_K = new Bounds(-20, 20, false);
    private static final Bounds SUN_FACTOR = new Bounds(0, 3, false);
    private static final String MIDDLE = ".middle";
    private static final Pattern GAS_OF_FEED =
            Pattern.compile("feed\\.feedstocks\\[[^\\]]+]\\.(methane_nm3_per_kg_vs|rate_per_day)(\\..*)?");

    private final Design base;
    private final List<Uncertain> inputs;
    private final List<List<Goal>> goals;

    /** A number that an input moves: its path, what the design has there, and what it may be. */
    private record Goal(String path, double drawn, Bounds bounds) {}

    /**
     * A draw.
     *
     * @param design the tank
     * @param asFed the same tank with the potential and rate of all feedstocks as the design states them
     * @param warmerK by how much the air is warmer than in the weather file
     * @param sunFactor factor on all irradiances
     * @param values what was drawn for each input: the number, or the factor where it is one, before it was held
     * @param held whether the input was held at an end of its key's range
     */
    public record Drawn(
            Design design, Design asFed, double warmerK, double sunFactor, double[] values, boolean[] held) {}

    /**
     * A design and its inputs.
     *
     * @throws Refused when an input leads to no number of the design
     */
    public UncertainTank(Design design, List<Uncertain> inputs) {
        base = ListedMaterials.of(design);
        this.inputs = List.copyOf(inputs);
        goals = inputs.stream().map(input -> goals(base, input)).toList();
    }

    private static List<Goal> goals(Design base, Uncertain input) {
        if (input.isOfWeather()) {
            boolean air = input.key().equals(Uncertain.AIR_OFFSET);
            return List.of(new Goal(input.key(), air ? 0 : 1, air ? AIR_OFFSET_K : SUN_FACTOR));
        }
        List<String> paths = input.key().contains("[]") ? entries(base, input.key()) : List.of(input.key());
        return paths.stream()
                .map(path -> new Goal(path, input.times() ? base.number(path) : Double.NaN, Design.bounds(path)))
                .toList();
    }

    /** The numbers that a key with {@code []} stands for. */
    private static List<String> entries(Design base, String key) {
        String pattern = Stream.of(key.split("\\[]", -1)).map(Pattern::quote).collect(Collectors.joining("\\[[0-9]+]"));
        List<String> paths = base.numbers().keySet().stream()
                .map(path -> path.endsWith(MIDDLE) ? path.substring(0, path.length() - MIDDLE.length()) : path)
                .filter(path -> path.matches(pattern))
                .toList();
        if (paths.isEmpty()) {
            throw new Refused.NoNumber(key, "has no place: this design has no such number in any entry");
        }
        return paths;
    }

    /**
     * What is wrong with an input of a design, if anything: no such number, or a design that is refused with it at its 5 or 95 % point.
     */
    public static Optional<String> fault(Design design, Uncertain input) {
        try {
            UncertainTank alone = new UncertainTank(design, List.of(input));
            for (double share : new double[] {0.05, 0.95}) {
                alone.drawn(share);
            }
            return Optional.empty();
        } catch (Refused refused) {
            return Optional.of(refused.faults().get(0).text());
        }
    }

    /** One text for each number that an input moves, the same for all paths that lead to it. */
    public static List<String> places(Design design, Uncertain input) {
        Design listed = ListedMaterials.of(design);
        return goals(listed, input).stream()
                .map(goal -> input.isOfWeather() ? goal.path() : Numbers.place(listed, goal.path()))
                .toList();
    }

    /** The design as drawn on paper. */
    public Design base() {
        return base;
    }

    /** Its inputs. */
    public List<Uncertain> inputs() {
        return inputs;
    }

    /**
     * The draw of a point.
     *
     * @param point one share of all values for each input, above 0 and below 1; more of them are ignored
     * @throws Refused when the design is not allowed so
     */
    public Drawn drawn(double... point) {
        Map<String, Double> numbers = new LinkedHashMap<>();
        double[] values = new double[inputs.size()];
        boolean[] held = new boolean[inputs.size()];
        for (int i = 0; i < values.length; i++) {
            values[i] = inputs.get(i).spread().quantile(point[i]);
            for (Goal goal : goals.get(i)) {
                double wanted = inputs.get(i).times() ? values[i] * goal.drawn() : values[i];
                held[i] |= !goal.bounds().holds(wanted);
                numbers.put(goal.path(), goal.bounds().nearest(wanted));
            }
        }
        Double warmerK = numbers.remove(Uncertain.AIR_OFFSET);
        Double sunFactor = numbers.remove(Uncertain.SUN_FACTOR);
        Design drawn = base.with(numbers);
        List<String> paths = new ArrayList<>(numbers.keySet());
        paths.stream().filter(path -> GAS_OF_FEED.matcher(path).matches()).forEach(numbers::remove);
        Design asFed = numbers.size() == paths.size() ? drawn : base.with(numbers);
        return new Drawn(drawn, asFed, warmerK == null ? 0 : warmerK, sunFactor == null ? 1 : sunFactor, values, held);
    }
}
