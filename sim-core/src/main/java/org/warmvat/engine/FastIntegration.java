package org.warmvat.engine;

import org.warmvat.network.Interval;
import org.warmvat.network.Network;
import org.warmvat.network.State;

/**
 * Carries a network over intervals: the live nodes by {@link LiveRun}s, everything slow by {@link SlowStep}s, one after the
 * other until both agree on the slurry's temperature and on the heat between them.
 */
final class FastIntegration {

    /** Error allowed in the slurry's temperature by the step of everything slow, K. */
    private static final double SLOW_TOLERANCE_K = 2e-6;

    /** Error allowed in the slurry's temperature by ending the exchange between both, K. */
    private static final double EXCHANGE_TOLERANCE_K = 5e-6;

    /** By how much the circuits pull the slurry back, moved by 1 K over a step; common tanks stay below this, K. */
    private static final double CIRCUITS_PULL_K_PER_K = 0.03;

    /** After so many exchanges without agreement the step is halved. */
    private static final int MOST_EXCHANGES = 10;

    private static final double SHORTEST_STEP_S = 0.01;
    private static final double MOST_GROWTH = 4;
    private static final double LEAST_SHRINKING = 0.2;
    private static final double CAUTION = 0.9;

    private final State state;
    private final HourRecord record;
    private final Network network;
    private final Switchboard switchboard;
    private final FastWatches watches;
    private final SlowHeat heat = new SlowHeat();
    private final SlowStep slow;
    private final LiveRun live;
    private final double[] slurryC = new double[SlowStep.stagesWithin()];
    private final double capacityJPerK;
    private double usualStepS = Hours.HOUR_S;
    private double slopeWPerS;
    private double nearJPerK;
    private double endRateKPerS;

    FastIntegration(Network network, State state, HourRecord record) {
        this.network = network;
        this.state = state;
        this.record = record;
        capacityJPerK = network.capacitiesJPerK()[0];
        switchboard = new Switchboard(network);
        slow = new SlowStep(network, state);
        live = new LiveRun(network, state, heat, switchboard);
        watches = new FastWatches(network, record);
    }

    /** Integrates over an interval without jumps. */
    void over(Interval interval) {
        network.enter(interval);
        double timeS = interval.startS();
        switchboard.settle(timeS, state, record);
        slow.begin(timeS, state);
        while (timeS < interval.endS()) {
            timeS = advance(timeS, interval.endS());
        }
        switchboard.settle(timeS, state, record);
    }

    /** Takes one step of everything slow with the live nodes' steps inside it; returns its end. */
    private double advance(double timeS, double endS) {
        double left = endS - timeS;
        double triedS = usualStepS > 0.9 * left ? endS : timeS + usualStepS;
        double agreedS = guess(timeS, triedS);
        for (int exchanges = 0; ; exchanges++) {
            double reachedS = live.over(timeS, triedS, state);
            double stepS = reachedS - timeS;
            boolean shortest = stepS <= SHORTEST_STEP_S;
            double changedK = changedK(timeS, reachedS);
            if (reachedS == agreedS && (shortest || changedK * slow.pullKPerK(stepS) < EXCHANGE_TOLERANCE_K)) {
                return accept(timeS, reachedS, 0);
            }
            agreedS = Double.NaN;
            if (exchanges > MOST_EXCHANGES && !shortest) {
                triedS = timeS + 0.5 * stepS;
                exchanges = 0;
                continue;
            }
            boolean wholeWay = reachedS == triedS && !live.switches();
            double expectedW = heat.meanUntilW(reachedS);
            double error = slowStep(timeS, stepS);
            if (error > 1 && !shortest) {
                triedS = timeS + stepS * Math.max(LEAST_SHRINKING, CAUTION / Math.cbrt(error));
                usualStepS = triedS - timeS;
                continue;
            }
            double growth = Math.min(MOST_GROWTH, CAUTION / Math.cbrt(Math.max(error, 1e-6)));
            usualStepS = Math.min(Hours.HOUR_S, Math.max(usualStepS, growth * stepS));
            double shiftK = (slow.meanW() - expectedW) * stepS / capacityJPerK;
            if (wholeWay && Math.abs(shiftK) * pullKPerK(stepS) < EXCHANGE_TOLERANCE_K) {
                return accept(timeS, reachedS, shiftK);
            }
            triedS = reachedS;
            agreedS = reachedS;
        }
    }

    /** Steps everything slow along the slurry's temperatures last noted; returns the error over what is allowed. */
    private double slowStep(double timeS, double stepS) {
        slow.attempt(timeS, stepS, slurryC);
        heat.fit(timeS, stepS, slow.startW(), slow.endW(), slow.meanW());
        return slow.errorK(stepS) / SLOW_TOLERANCE_K;
    }

    /** By how much the slurry, moved by 1 K over a step, is pulled back by everything, K. */
    private double pullKPerK(double stepS) {
        return slow.pullKPerK(stepS) + CIRCUITS_PULL_K_PER_K;
    }

    /**
     * Guesses the heat of everything slow until a time. While nothing is switched on the slurry's way is plain enough to step
     * everything slow along it at once.
     *
     * @return the time up to which such a step has been made, not a number without one
     */
    private double guess(double timeS, double triedS) {
        double lengthS = triedS - timeS;
        double rateKPerS = live.slurryKPerS(timeS, state);
        if (switchboard.allOff(state)) {
            double bendKPerS2 = 0.5 * slopeWPerS / capacityJPerK;
            for (int i = 0; i < slurryC.length; i++) {
                double aheadS = SlowStep.shareOf(i + 1) * lengthS;
                slurryC[i] = state.nodeC(0) + aheadS * (rateKPerS + aheadS * bendKPerS2);
            }
            return slowStep(timeS, lengthS) <= 1 ? triedS : Double.NaN;
        }
        // what lies next to the slurry follows it at once: a kink in its way is a jump of this heat
        double kinkW = -nearJPerK * (rateKPerS - endRateKPerS);
        double riseW = slopeWPerS * lengthS;
        heat.fit(timeS, lengthS, slow.startW(), slow.startW() + kinkW + riseW, slow.startW() + kinkW + riseW / 2);
        return Double.NaN;
    }

    /** Notes the slurry's temperatures at the slow step's stages; returns by how much they changed since the last run. */
    private double changedK(double timeS, double reachedS) {
        double changedK = 0;
        for (int i = 0; i < slurryC.length; i++) {
            double celsius = live.trace().slurryC(timeS + SlowStep.shareOf(i + 1) * (reachedS - timeS));
            changedK = Math.max(changedK, Math.abs(celsius - slurryC[i]));
            slurryC[i] = celsius;
        }
        return changedK;
    }

    /** Takes over the step agreed upon, the slurry shifted by what the last exchange still changed; returns its end. */
    private double accept(double timeS, double nowS, double shiftK) {
        LiveTrace trace = live.trace();
        watches.over(trace);
        live.accept(record.meters());
        slow.addMeters(nowS - timeS, record.meters());
        state.setLive(trace.at(trace.steps()), network.liveNodes());
        state.setNodeC(0, state.nodeC(0) + shiftK);
        slow.advance(state);
        slopeWPerS = heat.endSlopeWPerS();
        nearJPerK = slow.pullKPerK(nowS - timeS) * capacityJPerK;
        endRateKPerS = live.endSlurryKPerS();
        if (live.switches()) {
            switchboard.move(live.mover(), state, record);
            switchboard.settle(nowS, state, record);
            live.afterSwitch();
        }
        return nowS;
    }
}
