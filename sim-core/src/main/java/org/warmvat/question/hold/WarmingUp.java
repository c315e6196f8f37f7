package org.warmvat.question.hold;

import java.util.OptionalDouble;
import org.warmvat.design.Design;
import org.warmvat.engine.Hours;
import org.warmvat.tank.Course;
import org.warmvat.tank.Runner;
import org.warmvat.tank.TankRun;

/** The warm-up of a cold fill to the set-point, everything else, feed included, as in the starting state (model section 10). */
public final class WarmingUp {

    private static final double KWH_PER_W_H = 1e-3;

    private WarmingUp() {}

    /**
     * Hours until the set-point.
     *
     * @param hours when it begins and how long it is followed
     */
    public static OptionalDouble hours(Runner runner, Design design, double fillC, Hours hours) {
        TankRun run = runner.start(design, hours.first(), fillC);
        return Crossing.of(run, design.control().setpointC(), false, hours);
    }

    /** The same with its heat and its course. */
    public static HoldResult.WarmUp of(Runner runner, Design design, double fillC, Hours hours, boolean withSun) {
        OptionalDouble reached = hours(runner, design, fillC, hours);
        int length = (int) Math.ceil(reached.orElse(hours.end() - hours.first()));
        Hours taken = new Hours(hours.first(), Math.min(hours.end(), hours.first() + Math.max(1, length)));
        Course course = Course.of(runner.start(design, hours.first(), fillC), taken);
        return new HoldResult.WarmUp(
                withSun,
                runner.file().start().plusHours(hours.first()),
                fillC,
                reached,
                new HoldResult.WarmUpHeat(
                        KWH_PER_W_H * sum(course.heat().solarW()),
                        KWH_PER_W_H * sum(course.heat().backupW()),
                        course.boughtKWh()),
                course);
    }

    private static double sum(double[] values) {
        double sum = 0;
        for (double value : values) {
            sum += value;
        }
        return sum;
    }
}
