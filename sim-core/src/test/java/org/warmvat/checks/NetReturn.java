package org.warmvat.checks;

import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import org.warmvat.design.DailySchedule;
import org.warmvat.design.Design;
import org.warmvat.design.Mixer;
import org.warmvat.engine.FastEngine;
import org.warmvat.engine.HourSink;
import org.warmvat.sample.TankPlan;
import org.warmvat.study.StudyRefused;
import org.warmvat.study.YearStudy;
import org.warmvat.weather.Weather;
import org.warmvat.weather.WeatherFiles;

/**
 * The tank of the demonstration without sun, heated by a plain immersed element, in the demonstration's year: what foam and
 * motor do to its net return. The figures that the page prints stand here and are held against real runs.
 */
final class NetReturn {

    /** Foam of the poor tank, mm. */
    static final double POOR_FOAM_MM = 20;

    /** Electric power of the poor tank's motor, which never stops, W. */
    static final double POOR_MOTOR_W = 100;

    /** Foam of the good tank, mm. */
    static final double GOOD_FOAM_MM = 150;

    /** Net return of the poor tank in a year, kWh, to ten. */
    static final double POOR_NET_KWH = -1;

    /** Net return of the good tank in a year, kWh, to ten. */
    static final double GOOD_NET_KWH = 1;

    /** Foam at which the slowly stirred tank's net return turns positive, mm. */
    static final double TURNING_FOAM_MM = 1;

    /** Foam at which the tank with the poor one's motor turns, mm. */
    static final double TURNING_FOAM_WITH_MOTOR_MM = 1;

    /** Motor at which the good tank's net return turns negative, W. */
    static final double TURNING_MOTOR_W = 1;

    private static final Weather WEATHER = WeatherFiles.demonstration();

    private NetReturn() {}

    /** A paddle that turns once in twenty minutes against 60 N m, through a poor gear, with 2 W for its controller. */
    static Mixer slowPaddle() {
        return new Mixer(new Mixer.Turning(3, 60), 0.2, 2, 60);
    }

    /** A motor that never stops, of which 60 % reach the slurry. */
    static Mixer fastMotor(double electricW) {
        return new Mixer(new Mixer.Given(0.6 * electricW), 0.6, 0, 60);
    }

    /** The tank with foam all round. */
    static Design tank(double foamMm, Mixer mixer) {
        TankPlan plan = new TankPlan();
        plan.solar = false;
        plan.backup = Optional.of(TankPlan.immersed(1500, DailySchedule.continuous()));
        plan.wall = TankPlan.insulated(foamMm / 1000);
        plan.lid = plan.wall;
        plan.floor = plan.wall;
        plan.mixer = mixer;
        return plan.build();
    }

    /** Net return of a year: gas less element, motor and everything electric, kWh. */
    static double kWh(Design design) {
        try {
            return YearStudy.run(design, WEATHER, new FastEngine(), HourSink.IGNORE)
                    .year()
                    .gas()
                    .netEnergyKWh();
        } catch (StudyRefused e) {
            throw new IllegalStateException(e);
        }
    }

    /** Where a net return turns, by halving, to a tenth of the unit. */
    static double turning(DoubleUnaryOperator netKWh, double negative, double positive) {
        double below = negative;
        double above = positive;
        while (Math.abs(above - below) > 0.1) {
            double middle = (below + above) / 2;
            if (netKWh.applyAsDouble(middle) < 0) {
                below = middle;
            } else {
                above = middle;
            }
        }
        return (below + above) / 2;
    }
}
