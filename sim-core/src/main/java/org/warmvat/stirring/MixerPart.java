package org.warmvat.stirring;

import java.util.Optional;
import org.warmvat.design.tank.Mixer;
import org.warmvat.network.Interval;
import org.warmvat.network.KnownRate;
import org.warmvat.network.Network;
import org.warmvat.network.Part;
import org.warmvat.network.Source;
import org.warmvat.network.Surroundings;
import org.warmvat.network.meter.Balance;
import org.warmvat.network.meter.Line;
import org.warmvat.network.meter.Meter;
import org.warmvat.network.meter.Unit;
import org.warmvat.season.InForce;

/**
 * The mixer: runs all the time or some minutes from the start of each clock hour; its shaft power heats the slurry, the
 * drive's losses and idle power do not (equation 3.3).
 */
public final class MixerPart implements Part {

    /** Heat of the shaft. */
    public static final Line SHAFT = new Line("shaft_heat_kwh", "shaft", Unit.KWH);

    /** Meter of the shaft's heat, J. */
    public static final String SHAFT_HEAT = "shaft_heat";

    private static final double HOUR_S = 3600;
    private static final double SAME_S = 1e-6;

    /** A coil meets a stirred slurry where the mixer turned for at least this share of a measured step. */
    private static final double HALF = 0.5;

    private final double shaftW;
    private final double electricW;
    private final Surroundings surroundings;
    private final InForce season;
    private final Source heat;
    private final Source electricity;
    private Optional<KnownRate> measured = Optional.empty();
    private boolean running;

    /** Adds the mixer to a network. */
    public MixerPart(Mixer mixer, Surroundings surroundings, InForce season, Network.Assembly assembly) {
        shaftW = mixer.shaftW();
        electricW = mixer.electricW();
        this.surroundings = surroundings;
        this.season = season;
        heat = assembly.source(
                Network.SLURRY, assembly.meter(Meter.of(SHAFT_HEAT).told(SHAFT).entering(Balance.SLURRY, 1)));
        electricity = assembly.source(
                Network.NOWHERE, assembly.meter(Meter.electricity("mixer", "mixer", "mixer_electric_w")));
        assembly.part(this);
    }

    /** Turns as measured from now on, in place of its running times: the share of the time in which it turned. */
    public void turnAs(KnownRate share) {
        measured = Optional.of(share);
    }

    /** Whether the paddle turns in the interval entered; the coils pass heat better while it does. */
    public boolean isRunning() {
        return running;
    }

    @Override
    public double nextJumpS(double timeS) {
        if (measured.isPresent()) {
            return measured.get().nextJumpS(timeS);
        }
        double run = season.mixerSecondsPerHour(timeS);
        if (run <= 0 || run >= HOUR_S) {
            return Double.POSITIVE_INFINITY;
        }
        double secondOfHour = surroundings.secondOfHour(timeS);
        double untilStopS = run - secondOfHour;
        return timeS + (untilStopS > SAME_S ? untilStopS : HOUR_S - secondOfHour);
    }

    @Override
    public void enter(Interval interval) {
        double share = measured.isPresent() ? measured.get().at(interval.middleS()) : byItsTimes(interval);
        running = share >= HALF;
        heat.set(share * shaftW);
        electricity.set(share * electricW);
    }

    private double byItsTimes(Interval interval) {
        double secondOfHour = surroundings.secondOfHour(interval.middleS());
        return secondOfHour < season.mixerSecondsPerHour(interval.middleS()) ? 1 : 0;
    }
}
