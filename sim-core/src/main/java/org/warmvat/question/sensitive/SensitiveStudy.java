package org.warmvat.question.sensitive;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import org.warmvat.account.Account;
import org.warmvat.account.Period;
import org.warmvat.design.Design;
import org.warmvat.design.ListedMaterials;
import org.warmvat.design.gas.Gas;
import org.warmvat.design.keys.Refused;
import org.warmvat.network.meter.Energy;
import org.warmvat.question.Parallel;
import org.warmvat.tank.KeyFigures;
import org.warmvat.tank.Lines;
import org.warmvat.tank.Runner;

/** Runs a design with each of a dozen numbers that are never known well, and that it does not state, lower and higher. */
public final class SensitiveStudy {

    /** A step that another number forbids is halved this often before the number stays where it is. */
    private static final int HALVINGS = 6;

    private final Design design;
    private final Set<String> stated;
    private final Set<String> unstated;
    private final Runner runner;

    private SensitiveStudy(Design design, Set<String> unstated, Runner runner) {
        this.design = ListedMaterials.of(design);
        this.stated = design.materials().keySet();
        this.unstated = unstated;
        this.runner = runner;
    }

    /** A design to run, and how it came about. */
    private record Variant(Design design, Map<String, Double> values, boolean held) {}

    /**
     * Answers the question.
     *
     * @param design the design; it must go with the weather
     * @param unstated keys that it leaves to their defaults
     * @param runner weather and engine
     * @param parallel the threads
     */
    public static SensitiveResult run(Design design, Set<String> unstated, Runner runner, Parallel parallel) {
        return new SensitiveStudy(design, unstated, runner).run(parallel);
    }

    private SensitiveResult run(Parallel parallel) {
        List<Doubtful> asked = new ArrayList<>();
        List<Variant> variants = new ArrayList<>(List.of(new Variant(design, Map.of(), false)));
        for (Doubtful number : Doubtful.DOZEN) {
            Map<String, Double> taken = number.numbers(design, stated, unstated);
            if (!taken.isEmpty()) {
                asked.add(number);
                variants.add(variant(number, taken, -1));
                variants.add(variant(number, taken, 1));
            }
        }
        List<SensitiveResult.Figures> figures = parallel.map(variants, variant -> figures(variant.design()));
        List<SensitiveResult.Entry> entries = new ArrayList<>();
        for (int i = 0; i < asked.size(); i++) {
            int low = 1 + 2 * i;
            entries.add(new SensitiveResult.Entry(
                    asked.get(i),
                    asked.get(i).numbers(design, stated, unstated),
                    end(variants.get(low), figures.get(low)),
                    end(variants.get(low + 1), figures.get(low + 1))));
        }
        entries.sort(Comparator.comparingDouble(SensitiveResult.Entry::swing).reversed());
        return new SensitiveResult(design.gas().filter(Gas::isUsed).isPresent(), figures.get(0), entries);
    }

    private static SensitiveResult.End end(Variant variant, SensitiveResult.Figures figures) {
        return new SensitiveResult.End(variant.values(), variant.held(), figures);
    }

    /** A number is held at the end of its range, and short of what the rest of the design forbids. */
    private Variant variant(Doubtful number, Map<String, Double> taken, int direction) {
        double share = 1;
        for (int halving = 0; halving < HALVINGS; halving++) {
            Map<String, Double> values = new TreeMap<>();
            boolean held = share < 1;
            for (Map.Entry<String, Double> one : taken.entrySet()) {
                double wanted = number.moved(one.getValue(), direction * share);
                values.put(one.getKey(), Design.bounds(one.getKey()).nearest(wanted));
                held |= !Design.bounds(one.getKey()).holds(wanted);
            }
            try {
                return new Variant(design.with(values), values, held);
            } catch (Refused forbidden) {
                share /= 2;
            }
        }
        return new Variant(design, taken, true);
    }

    private SensitiveResult.Figures figures(Design some) {
        Period year = runner.year(some, Account.Keep.SUMS).whole();
        return new SensitiveResult.Figures(
                some.gas().isPresent()
                        ? OptionalDouble.of(year.of(Lines.leading(year.books())))
                        : OptionalDouble.empty(),
                year.kWh(Energy.FUEL) + year.kWh(Energy.HEATING_ELECTRICITY) + year.kWh(Energy.MACHINERY),
                year.of(KeyFigures.BELOW_FLOOR_HOURS),
                year.of(KeyFigures.MEAN_C));
    }
}
