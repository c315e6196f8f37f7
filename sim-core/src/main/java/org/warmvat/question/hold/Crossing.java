package org.warmvat.question.hold;

import java.util.OptionalDouble;
import org.warmvat.engine.HourRecord;
import org.warmvat.engine.HourSink;
import org.warmvat.engine.Hours;
import org.warmvat.tank.TankRun;

/** Listens for the moment at which the slurry reaches a temperature, and ends the run there. */
public final class Crossing implements HourSink {

    private final double goalC;
    private final boolean falling;
    private double beforeC;
    private int hours;
    private OptionalDouble reached = OptionalDouble.empty();

    private Crossing(double goalC, boolean falling, double startC) {
        this.goalC = goalC;
        this.falling = falling;
        beforeC = startC;
        if (falling ? startC <= goalC : startC >= goalC) {
            reached = OptionalDouble.of(0);
        }
    }

    /**
     * Hours that a run takes to reach a temperature from its present state, along a straight line within the hour; absent when it does not.
     *
     * @param falling whether from above
     * @param hours how long it is followed
     */
    static OptionalDouble of(TankRun run, double goalC, boolean falling, Hours hours) {
        Crossing crossing = new Crossing(goalC, falling, run.slurryC());
        if (crossing.reached.isEmpty()) {
            run.over(hours, crossing);
        }
        return crossing.reached;
    }

    @Override
    public boolean accept(HourRecord hour) {
        double extremeC = falling ? hour.slurryLeastC() : hour.slurryMostC();
        double endC = hour.stateWithoutLayers().nodeC(0);
        if (reached.isEmpty() && (falling ? extremeC <= goalC : extremeC >= goalC)) {
            boolean passed = falling ? endC <= goalC : endC >= goalC;
            double towardsC = passed ? endC : extremeC;
            reached = OptionalDouble.of(hours + (beforeC == towardsC ? 1 : (beforeC - goalC) / (beforeC - towardsC)));
        }
        beforeC = endC;
        hours++;
        return reached.isEmpty();
    }
}
