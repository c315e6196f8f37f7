package org.warmvat.study;

import org.warmvat.design.BackupCircuit;
import org.warmvat.design.Design;
import org.warmvat.engine.HourRecord;
import org.warmvat.engine.HourSink;
import org.warmvat.heating.BackupPart;
import org.warmvat.tank.Housekeeping;
import org.warmvat.tank.TankRun;

/** Adds up the hours of a run without keeping them: every meter, every watch, the lowest slurry temperature and its hour. */
public final class Tally implements HourSink {

    private static final double S_PER_HOUR = 3600;
    private static final double J_PER_KWH = 3.6e6;

    private final TankRun run;
    private final double[] meters;
    private final double[] watchS;
    private final int belowFloor;
    private final double mostShortHours;
    private int hours;
    private double leastC = Double.POSITIVE_INFINITY;
    private int leastHour;

    /** A tally of a whole run. */
    public Tally(TankRun run) {
        this(run, Double.POSITIVE_INFINITY);
    }

    /**
     * A tally that ends the run when it has been short for too long.
     *
     * @param run the run it listens to
     * @param mostShortHours hours below the floor after which the rest is of no interest
     */
    public Tally(TankRun run, double mostShortHours) {
        this.run = run;
        this.mostShortHours = mostShortHours;
        meters = new double[run.tank().network().meters().size()];
        watchS = new double[run.tank().network().watches().size()];
        belowFloor = run.watch(Housekeeping.BELOW_FLOOR);
    }

    @Override
    public boolean accept(HourRecord hour) {
        hours++;
        for (int i = 0; i < meters.length; i++) {
            meters[i] += hour.meter(i);
        }
        for (int i = 0; i < watchS.length; i++) {
            watchS[i] += hour.watchS(i);
        }
        if (hour.slurryLeastC() < leastC) {
            leastC = hour.slurryLeastC();
            leastHour = hour.hour();
        }
        return shortHours() <= mostShortHours;
    }

    /** Hours counted. */
    public int hours() {
        return hours;
    }

    /** Integral of a meter, J or Nm3; 0 when the design has none such. */
    public double meter(String name) {
        int index = run.meter(name);
        return index < 0 ? 0 : meters[index];
    }

    /** Energy bought for the backup of the design that ran, kWh. */
    double boughtKWh(Design design) {
        double efficiency = design.backup().map(BackupCircuit::efficiency).orElse(1.0);
        return meter(BackupPart.BACKUP_POWER) / efficiency / J_PER_KWH;
    }

    /** How long a watched condition held, h; 0 when the design has none such. */
    public double watchHours(String name) {
        int index = run.watch(name);
        return index < 0 ? 0 : watchS[index] / S_PER_HOUR;
    }

    /** Hours below the floor. */
    public double shortHours() {
        return watchS[belowFloor] / S_PER_HOUR;
    }

    /** Degree-hours below the floor, K h. */
    public double shortKelvinHours() {
        return meter(Housekeeping.SHORTFALL) / S_PER_HOUR;
    }

    /** Lowest slurry temperature, °C. */
    public double leastC() {
        return leastC;
    }

    /** Index of the weather hour in which it was lowest. */
    public int leastHour() {
        return leastHour;
    }
}
