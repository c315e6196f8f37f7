package org.warmvat.question.spread;

import java.time.LocalDateTime;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.warmvat.design.Design;
import org.warmvat.design.feeding.Estimate;
import org.warmvat.design.season.SeasonTable;
import org.warmvat.engine.HourRecord;
import org.warmvat.engine.HourSink;
import org.warmvat.gas.GasAlong;
import org.warmvat.gas.GasEnergy;
import org.warmvat.network.Network;

/** Follows a draw: the gas of other feeds along its temperatures, and the mean slurry temperature of each day of the year. */
final class Followed implements HourSink {

    private static final double J_PER_KWH = 3.6e6;

    private final LocalDateTime fileStart;
    private final Optional<GasAlong> gas;
    private final double[] methaneNm3 = new double[Estimate.values().length];
    private final double[] sumC = new double[SeasonTable.DAYS];
    private final int[] hours = new int[SeasonTable.DAYS];
    private double beforeC = Double.NaN;

    /**
     * Begins with a run-in.
     *
     * @param fileStart beginning of the weather file
     * @param fed the tank whose feed makes the gas, low, middle and high; none where no gas is followed
     */
    Followed(LocalDateTime fileStart, Optional<Design> fed) {
        this.fileStart = fileStart;
        gas = fed.filter(design -> design.gas().isPresent()).map(design -> new GasAlong(design, Estimate.values()));
    }

    /** The run-in is over. */
    void begin() {
        Arrays.fill(methaneNm3, 0);
        Arrays.fill(sumC, 0);
        Arrays.fill(hours, 0);
    }

    @Override
    public boolean accept(HourRecord hour) {
        LocalDateTime start = fileStart.plusHours(hour.hour());
        double afterC = hour.stateWithoutLayers().nodeC(Network.SLURRY);
        double meanC = Double.isNaN(beforeC) ? afterC : (beforeC + afterC) / 2;
        beforeC = afterC;
        gas.ifPresent(one -> add(one.ofHour(start, meanC)));
        int day = SeasonTable.dayOf(start.toLocalDate());
        sumC[day] += meanC;
        hours[day]++;
        return true;
    }

    private void add(double[] ofHourNm3) {
        for (int i = 0; i < ofHourNm3.length; i++) {
            methaneNm3[i] += ofHourNm3[i];
        }
    }

    /** Energy of the gas made since the run-in; not a number where none is followed. */
    double gasKWh(Estimate estimate) {
        int place = List.of(Estimate.values()).indexOf(estimate);
        return gas.isPresent() ? methaneNm3[place] * GasEnergy.METHANE_J_PER_NM3 / J_PER_KWH : Double.NaN;
    }

    /** Not a number on days that the year has no hours of. */
    double[] dayMeansC() {
        double[] means = new double[SeasonTable.DAYS];
        for (int day = 0; day < means.length; day++) {
            means[day] = sumC[day] / hours[day];
        }
        return means;
    }
}
