package org.warmvat.stirring;

import org.warmvat.design.Mixer;
import org.warmvat.network.Balance;
import org.warmvat.network.Flows;
import org.warmvat.network.Interval;
import org.warmvat.network.Line;
import org.warmvat.network.Meter;
import org.warmvat.network.Network;
import org.warmvat.network.SlowPart;
import org.warmvat.network.Surroundings;
import org.warmvat.network.Unit;

/**
 * The mixer: runs all the time or some minutes from the start of each clock hour; its shaft power heats the slurry, the
 * drive's losses and idle power do not (equation 3.3).
 */
public final class MixerPart implements SlowPart {

    /** Heat of the shaft. */
    public static final Line SHAFT = new Line("shaft_heat_kwh", "shaft", Unit.KWH);

    /** Meter of the shaft's heat, J. */
    public static final String SHAFT_HEAT = "shaft_heat";

    /** Meter of the mixer's electricity, J. */
    public static final String MIXER_ELECTRICITY = "mixer_electricity";

    private static final double HOUR_S = 3600;
    private static final double SAME_S = 1e-6;

    private final Mixer mixer;
    private final Surroundings surroundings;
    private final int slurry;
    private final int heatMeter;
    private final int electricityMeter;
    private boolean running;

    /** Adds the mixer to a network. */
    public MixerPart(Mixer mixer, Surroundings surroundings, Network.Assembly assembly, int slurry) {
        this.mixer = mixer;
        this.surroundings = surroundings;
        this.slurry = slurry;
        heatMeter = assembly.meter(Meter.of(SHAFT_HEAT).told(SHAFT).entering(Balance.SLURRY, 1));
        electricityMeter = assembly.meter(Meter.electricity("mixer", "mixer", "mixer_electric_w"));
    }

    /** Whether the paddle turns in the interval entered; the coils pass heat better while it does. */
    public boolean isRunning() {
        return running;
    }

    @Override
    public double nextJumpS(double timeS) {
        double run = mixer.runSecondsPerHour();
        if (run <= 0 || run >= HOUR_S) {
            return Double.POSITIVE_INFINITY;
        }
        double secondOfHour = surroundings.secondOfDay(timeS) % HOUR_S;
        double untilStopS = run - secondOfHour;
        return timeS + (untilStopS > SAME_S ? untilStopS : HOUR_S - secondOfHour);
    }

    @Override
    public void enter(Interval interval) {
        double secondOfHour = surroundings.secondOfDay(interval.middleS()) % HOUR_S;
        running = secondOfHour < mixer.runSecondsPerHour();
    }

    @Override
    public void surround(double timeS, Flows flows) {
        if (running) {
            flows.heat(slurry, mixer.shaftW(), heatMeter);
            flows.meter(electricityMeter, mixer.electricW());
        }
    }
}
