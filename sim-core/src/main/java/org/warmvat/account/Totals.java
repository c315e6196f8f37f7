package org.warmvat.account;

import java.util.Arrays;
import java.util.List;
import org.warmvat.engine.HourRecord;
import org.warmvat.network.State;
import org.warmvat.network.meter.Energy;
import org.warmvat.network.meter.Followed;
import org.warmvat.network.meter.Hour;
import org.warmvat.network.meter.Line;
import org.warmvat.network.meter.Sums;

/** What a span of hours added up to, added to while it runs. */
final class Totals implements Sums {

    private final Books books;
    private final List<Followed<Hour>> hourly;
    private final List<Followed<Sums>> daily;
    private final double[] meters;
    private final double[] watchS;
    private final double[] watchWorst;
    private final double[] ofHours;
    private final double[] ofDays;
    private final State begin;
    private final State end;
    private double hours;
    private double leastC;
    private double mostC;
    private int leastHour;

    /** Nothing yet, from a state on. */
    Totals(Books books, State begin) {
        this.books = books;
        this.begin = begin.copy();
        end = begin.copy();
        hourly = books.network().declarations().hourly();
        daily = books.network().declarations().daily();
        meters = new double[books.network().declarations().meters().size()];
        watchS = new double[books.network().watches().size()];
        watchWorst = new double[watchS.length];
        ofHours = new double[hourly.size()];
        ofDays = new double[daily.size()];
        clear();
    }

    private void clear() {
        hours = 0;
        leastC = Double.POSITIVE_INFINITY;
        mostC = Double.NEGATIVE_INFINITY;
        leastHour = -1;
        Arrays.fill(meters, 0);
        Arrays.fill(watchS, 0);
        Arrays.fill(watchWorst, Double.NEGATIVE_INFINITY);
        Arrays.setAll(ofHours, i -> hourly.get(i).over().none());
        Arrays.setAll(ofDays, i -> daily.get(i).over().none());
    }

    /** Begins again where it ends: a run by the thousand makes no new one each day. */
    void beginAgain() {
        begin.set(end);
        clear();
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
        for (int i = 0; i < ofHours.length; i++) {
            Followed<Hour> one = hourly.get(i);
            ofHours[i] = one.over().join(ofHours[i], one.value().applyAsDouble(hour));
        }
        see(hour.slurryLeastC(), hour.slurryMostC(), hour.hour());
    }

    /** Takes these hours for a day and looks at what is followed day by day. */
    void endDay() {
        for (int i = 0; i < ofDays.length; i++) {
            Followed<Sums> one = daily.get(i);
            ofDays[i] = one.over().join(ofDays[i], one.value().applyAsDouble(this));
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
        for (int i = 0; i < ofHours.length; i++) {
            ofHours[i] = hourly.get(i).over().join(ofHours[i], next.ofHours[i]);
        }
        for (int i = 0; i < ofDays.length; i++) {
            ofDays[i] = daily.get(i).over().join(ofDays[i], next.ofDays[i]);
        }
        see(next.leastC, next.mostC, next.leastHour);
        end.set(next.end);
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
    public double ofHours(int index) {
        return ofHours[index];
    }

    @Override
    public double ofDays(int index) {
        return ofDays[index];
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
