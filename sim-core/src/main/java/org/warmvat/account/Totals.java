package org.warmvat.account;

import java.util.Arrays;
import java.util.List;
import org.warmvat.engine.HourRecord;
import org.warmvat.network.Network;
import org.warmvat.network.State;
import org.warmvat.network.meter.Declarations;
import org.warmvat.network.meter.Energy;
import org.warmvat.network.meter.Line;
import org.warmvat.network.meter.Sums;

/** What a span of hours added up to, added to while it runs. */
final class Totals implements Sums {

    private final Books books;
    private final Declarations.Judgement[] judgements;
    private final double[] meters;
    private final double[] watchS;
    private final double[] watchWorst;
    private final int[] starts;
    private final double[] highest;
    private final double[] above;
    private final double[] chosen;
    private final double[] leastEndC;
    private final double[] mostEndC;
    private final double[] sumEndC;
    private final double[] greatestDay;
    private final State begin;
    private final State end;
    private double hours;
    private double leastC = Double.POSITIVE_INFINITY;
    private double mostC = Double.NEGATIVE_INFINITY;
    private int leastHour = -1;

    /** Nothing yet, from a state on. */
    Totals(Books books, State begin) {
        this.books = books;
        this.begin = begin.copy();
        end = begin.copy();
        Network network = books.network();
        List<Declarations.Judgement> judged = network.declarations().judgements();
        judgements = judged.toArray(Declarations.Judgement[]::new);
        meters = new double[network.declarations().meters().size()];
        watchS = new double[network.watches().size()];
        watchWorst = new double[network.watches().size()];
        Arrays.fill(watchWorst, Double.NEGATIVE_INFINITY);
        starts = new int[network.switches().size()];
        highest = new double[judgements.length];
        above = new double[judgements.length];
        Declarations declared = network.declarations();
        chosen = new double[declared.chosen().size()];
        leastEndC = filled(declared.endsOfHours().size(), Double.POSITIVE_INFINITY);
        mostEndC = filled(leastEndC.length, Double.NEGATIVE_INFINITY);
        sumEndC = new double[leastEndC.length];
        greatestDay = new double[declared.days().size()];
    }

    private static double[] filled(int length, double value) {
        double[] array = new double[length];
        Arrays.fill(array, value);
        return array;
    }

    void add(HourRecord hour) {
        hours++;
        for (int i = 0; i < meters.length; i++) {
            meters[i] += hour.meter(i);
        }
        for (int i = 0; i < watchS.length; i++) {
            watchS[i] += hour.watchS(i);
            watchWorst[i] = Math.max(watchWorst[i], hour.watchWorst(i));
        }
        for (int i = 0; i < starts.length; i++) {
            starts[i] += hour.starts(i);
        }
        for (int i = 0; i < judgements.length; i++) {
            double value = judgements[i].value().applyAsDouble(hour::meter);
            highest[i] = Math.max(highest[i], value);
            above[i] += value > judgements[i].limit() ? 1 : 0;
        }
        see(hour.slurryLeastC(), hour.slurryMostC(), hour.hour());
        addDeclared(hour);
    }

    private void addDeclared(HourRecord hour) {
        Declarations declared = books.network().declarations();
        for (int i = 0; i < chosen.length; i++) {
            Declarations.Chosen one = declared.chosen().get(i);
            chosen[i] += one.hour().test(hour.hour()) ? one.value().applyAsDouble(hour::meter) : 0;
        }
        for (int i = 0; i < sumEndC.length; i++) {
            double celsius =
                    hour.stateWithoutLayers().nodeC(declared.endsOfHours().get(i));
            leastEndC[i] = Math.min(leastEndC[i], celsius);
            mostEndC[i] = Math.max(mostEndC[i], celsius);
            sumEndC[i] += celsius;
        }
    }

    /** Takes these hours for a day and looks at what is compared day by day. */
    void endDay() {
        for (int i = 0; i < greatestDay.length; i++) {
            greatestDay[i] = books.network().declarations().days().get(i).applyAsDouble(this);
        }
    }

    /** Adds a span that follows. */
    void add(Totals next) {
        hours += next.hours;
        for (int i = 0; i < meters.length; i++) {
            meters[i] += next.meters[i];
        }
        for (int i = 0; i < watchS.length; i++) {
            watchS[i] += next.watchS[i];
            watchWorst[i] = Math.max(watchWorst[i], next.watchWorst[i]);
        }
        for (int i = 0; i < starts.length; i++) {
            starts[i] += next.starts[i];
        }
        for (int i = 0; i < judgements.length; i++) {
            highest[i] = Math.max(highest[i], next.highest[i]);
            above[i] += next.above[i];
        }
        see(next.leastC, next.mostC, next.leastHour);
        end.set(next.end);
        for (int i = 0; i < chosen.length; i++) {
            chosen[i] += next.chosen[i];
        }
        for (int i = 0; i < sumEndC.length; i++) {
            leastEndC[i] = Math.min(leastEndC[i], next.leastEndC[i]);
            mostEndC[i] = Math.max(mostEndC[i], next.mostEndC[i]);
            sumEndC[i] += next.sumEndC[i];
        }
        for (int i = 0; i < greatestDay.length; i++) {
            greatestDay[i] = Math.max(greatestDay[i], next.greatestDay[i]);
        }
    }

    private void see(double least, double most, int hour) {
        if (least < leastC) {
            leastC = least;
            leastHour = hour;
        }
        mostC = Math.max(mostC, most);
    }

    /** The state at the end of the last hour; asked of an engine for each hour it would cost more than the sums. */
    void endAt(State state) {
        end.set(state);
    }

    State end() {
        return end;
    }

    double watchWorst(int watch) {
        return watchWorst[watch];
    }

    /** Index of the weather hour with the lowest slurry temperature. */
    int leastHour() {
        return leastHour;
    }

    @Override
    public double hours() {
        return hours;
    }

    @Override
    public double meter(int meter) {
        return meters[meter];
    }

    @Override
    public double watchS(int watch) {
        return watchS[watch];
    }

    @Override
    public int starts(int index) {
        return starts[index];
    }

    @Override
    public double riseK(int node) {
        return end.nodeC(node) - begin.nodeC(node);
    }

    @Override
    public double stockRise(int stock) {
        return end.stock(stock) - begin.stock(stock);
    }

    @Override
    public double slurryLeastC() {
        return leastC;
    }

    @Override
    public double slurryMostC() {
        return mostC;
    }

    @Override
    public double highest(int judgement) {
        return highest[judgement];
    }

    @Override
    public double hoursAbove(int judgement) {
        return above[judgement];
    }

    @Override
    public double chosen(int index) {
        return chosen[index];
    }

    @Override
    public double leastEndC(int index) {
        return leastEndC[index];
    }

    @Override
    public double meanEndC(int index) {
        return sumEndC[index] / hours;
    }

    @Override
    public double mostEndC(int index) {
        return mostEndC[index];
    }

    @Override
    public double greatestDay(int index) {
        return greatestDay[index];
    }

    @Override
    public double of(Line line) {
        return books.value(line, this);
    }

    @Override
    public double kWh(Energy side) {
        return books.kWh(side, this);
    }
}
