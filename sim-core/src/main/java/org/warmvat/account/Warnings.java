package org.warmvat.account;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.BinaryOperator;
import org.warmvat.network.Warning;
import org.warmvat.network.meter.Declarations;
import org.warmvat.network.meter.Watched;

/** What runs warn of: conditions watched in every instant, judged hour by hour, and judged day by day. */
public final class Warnings {

    private static final double S_PER_HOUR = 3600;
    private static final double MINUTES_PER_HOUR = 60;
    /** Hours that are told without a decimal. */
    private static final double LONG = 9.95;

    private static final Comparator<Warning> MOST = Comparator.comparingDouble(Warning::count)
            .thenComparingDouble(Warning::worst)
            .thenComparing(Warning::sentence);

    private Warnings() {}

    static List<Warning> of(Books books, Totals whole) {
        List<Warning> found = new ArrayList<>();
        Declarations declared = books.network().declarations();
        for (int i = 0; i < declared.watched().size(); i++) {
            watched(declared.watched().get(i), whole.watchS(i) / S_PER_HOUR, whole.watchWorst(i), found);
        }
        declared.checks().forEach(check -> checked(check, whole, found));
        List<String> order = books.order().warnings();
        found.sort(Comparator.comparingInt(warning -> place(order, warning)));
        return List.copyOf(found);
    }

    private static void checked(Declarations.Check check, Totals whole, List<Warning> found) {
        int[] above = check.above().stream()
                .mapToInt(mark -> (int) mark.applyAsDouble(whole))
                .toArray();
        if (above[0] > 0) {
            double worst = check.worst().applyAsDouble(whole);
            found.add(new Warning(check.key(), check.sentence().of(above, worst), above[0], worst));
        }
    }

    private static int place(List<String> order, Warning warning) {
        int place = order.indexOf(warning.key());
        return place < 0 ? order.size() : place;
    }

    /** The worst value of a watch is its mark plus or minus the worst margin. */
    private static void watched(Watched watched, double hours, double margin, List<Warning> found) {
        if (hours > 0 && watched.warning().isPresent()) {
            Watched.Caution caution = watched.warning().get();
            double worst = caution.mark() + caution.sign() * margin;
            String sentence = String.format(Locale.ROOT, caution.sentence(), duration(hours), worst);
            found.add(new Warning(watched.key(), sentence, hours, worst));
        }
    }

    /** Hours, or minutes where hours would round to little or nothing. */
    private static String duration(double hours) {
        return hours >= 1
                ? String.format(Locale.ROOT, hours >= LONG || hours == Math.rint(hours) ? "%.0f h" : "%.1f h", hours)
                : String.format(Locale.ROOT, "%.0f min", Math.ceil(hours * MINUTES_PER_HOUR));
    }

    /** Of each kind the warning of the run that had most of it; the order of the runs does not matter. */
    public static List<Warning> worst(Collection<List<Warning>> runs) {
        Worst worst = new Worst();
        runs.forEach(worst::add);
        return worst.list();
    }

    /** Of each kind the warning of the run that had most of it, gathered run by run in memory that does not grow with them. */
    public static final class Worst {

        private final Map<String, Warning> worst = new HashMap<>();
        private final Map<String, Integer> places = new HashMap<>();

        /** Adds the warnings of a run. */
        public void add(List<Warning> run) {
            for (int place = 0; place < run.size(); place++) {
                Warning warning = run.get(place);
                places.merge(warning.key(), place, Math::min);
                worst.merge(warning.key(), warning, BinaryOperator.maxBy(MOST));
            }
        }

        /** What was gathered, in the order of the runs' own lists. */
        public List<Warning> list() {
            return worst.values().stream()
                    .sorted(Comparator.<Warning>comparingInt(warning -> places.get(warning.key()))
                            .thenComparing(Warning::key))
                    .toList();
        }
    }
}
