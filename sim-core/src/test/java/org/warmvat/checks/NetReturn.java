package org.warmvat.checks;

import java.util.Locale;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import org.warmvat.design.Design;
import org.warmvat.design.season.DailySchedule;
import org.warmvat.design.tank.Mixer;
import org.warmvat.engine.HourSink;
import org.warmvat.engine.exponential.ExponentialEngine;
import org.warmvat.question.year.YearStudy;
import org.warmvat.sample.TankPlan;
import org.warmvat.tank.KeyFigures;
import org.warmvat.tank.Runner;
import org.warmvat.tank.StudyRefused;
import org.warmvat.weather.Weather;
import org.warmvat.weather.file.WeatherFiles;

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
    static final double POOR_NET_KWH = -370;

    /** Net return of the good tank in a year, kWh, to ten. */
    static final double GOOD_NET_KWH = 1210;

    /** Foam at which the slowly stirred tank's net return turns positive, mm. */
    static final double TURNING_FOAM_MM = 20.8;

    /** Foam at which the tank with the poor one's motor turns, mm. */
    static final double TURNING_FOAM_WITH_MOTOR_MM = 27.8;

    /** Motor at which the good tank's net return turns negative, W. */
    static final double TURNING_MOTOR_W = 179;

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
            return YearStudy.run(design, new Runner(WEATHER, new ExponentialEngine()), HourSink.IGNORE)
                    .whole()
                    .of(KeyFigures.NET);
        } catch (StudyRefused e) {
            throw new IllegalStateException(e);
        }
    }

    /** What the page says of it. */
    static String text() {
        return String.format(
                Locale.ROOT,
                """

                ## Foam and motor: two tanks in the demonstration's year

                That a poorly insulated tank with a plain electric element and a fast motor eats more than it gives, and a well insulated, slowly \
                stirred one does not, is common practice, no source. Real runs (`NetReturnTest`) of the demonstration's tank of 900 litres and \
                20 kg of feed and water a day at 36 °C, without sun, heated by an immersed electric element, in the demonstration's year:

                | tank | net return, kWh a year |
                |---|---|
                | %.0f mm of foam, motor of %.0f W that never stops | %.0f |
                | %.0f mm of foam, paddle turning once in twenty minutes | %+.0f |

                With that paddle the net return turns positive at %.1f mm of foam; with the motor of %.0f W at %.1f mm. Under %.0f mm of foam it turns \
                negative at a motor of %.0f W (60 %% of which warms the slurry and spares the element). `-Dnetreturn.search=true` searches \
                these anew.
                """,
                POOR_FOAM_MM,
                POOR_MOTOR_W,
                POOR_NET_KWH,
                GOOD_FOAM_MM,
                GOOD_NET_KWH,
                TURNING_FOAM_MM,
                POOR_MOTOR_W,
                TURNING_FOAM_WITH_MOTOR_MM,
                GOOD_FOAM_MM,
                TURNING_MOTOR_W);
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
