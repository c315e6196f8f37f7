package org.warmvat.question.hold;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.warmvat.design.Design;
import org.warmvat.design.heating.BackupCircuit;
import org.warmvat.design.heating.SolarCircuit;
import org.warmvat.engine.Hours;
import org.warmvat.network.Network;
import org.warmvat.network.State;
import org.warmvat.question.Variations;
import org.warmvat.tank.Runner;
import org.warmvat.tank.TankRun;

/** A tank that runs well, and its state at the beginning of each hour. */
record HealthyTank(Design design, Network network, List<State> states) {

    /** Runs it in and through a file up to an hour. */
    static HealthyTank of(Design design, Runner runner, int lastHour) {
        TankRun run = runner.runIn(design);
        List<State> states = new ArrayList<>(List.of(run.state().copy()));
        run.over(new Hours(0, lastHour), hour -> states.add(hour.state().copy()));
        return new HealthyTank(design, run.tank().network(), states);
    }

    /** The same tank once its heat has failed. */
    Failed failed(HoldResult.Cause cause, Runner runner) {
        Design noHeater = design.without(BackupCircuit.class);
        Design left = cause == HoldResult.Cause.HEATER
                ? noHeater
                : Variations.withoutFeed(Variations.withoutMixing(noHeater.without(SolarCircuit.class)));
        return new Failed(left, runner, this);
    }

    /** A tank that fails at the beginning of an hour, from the state in which the healthy one is then. */
    record Failed(Design design, Runner runner, HealthyTank healthy) {

        TankRun at(int hour) {
            TankRun run = runner.start(design, hour);
            run.takeOver(healthy.network(), healthy.states().get(hour));
            return run;
        }

        /** How long it takes to cool to a temperature, h; absent when it does not within some hours. */
        OptionalDouble reached(double goalC, Hours hours) {
            return Crossing.of(at(hours.first()), goalC, true, hours);
        }
    }
}
