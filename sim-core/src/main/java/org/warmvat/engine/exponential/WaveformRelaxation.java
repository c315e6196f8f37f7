package org.warmvat.engine.exponential;

import org.warmvat.engine.EngineFailure;
import org.warmvat.engine.HourRecord;
import org.warmvat.engine.Hours;
import org.warmvat.network.Interval;
import org.warmvat.network.Network;
import org.warmvat.network.State;

/**
 * Steps of an hour, and halves of it where needed: what chains and rooms take is foreseen, the slurry lives against it, and what was
 * foreseen wrongly is put right once (waveform relaxation; Lelarasmee, Ruehli and Sangiovanni-Vincentelli, IEEE Trans. CAD 1 (1982)). The
 * size of that correction is the error estimate.
 */
final class WaveformRelaxation {

    /** The slurry may be put right by this much at the end of a step, K. */
    private static final double TOLERANCE_K = 5e-4;

    /** Or the heat taken by this share, whichever is more: a bare tank's films are not straight within any hour. */
    private static final double TOLERANCE_SHARE = 2e-3;

    /** Sources are told by value and slope: over so many kelvin of the slurry that is good enough. */
    private static final double MOST_RISE_K = 2;

    /** An hour is halved this often at most: every level costs a set of responses for each design. */
    private static final int HALVINGS = 3;

    private final Network network;
    private final State state;
    private final HourRecord record;
    private final LinearSubsystem linear;
    private final LiveSubsystem live;
    private final StepLength[] lengths = new StepLength[HALVINGS + 1];
    private final Checkpoint[] checkpoints = new Checkpoint[HALVINGS + 1];
    private final double[] toRoomsW;
    private final double slurryJPerK;
    private int hour;
    private boolean layersBehind;
    private double askedJumpS = Double.POSITIVE_INFINITY;
    private double nextJumpS;

    WaveformRelaxation(Network network, State state, HourRecord record) {
        this.network = network;
        this.state = state;
        this.record = record;
        linear = new LinearSubsystem(network);
        ready(0);
        linear.enter(state);
        live = new LiveSubsystem(network, record, linear);
        toRoomsW = new double[network.nodes().size()];
        slurryJPerK = network.nodes().get(Network.SLURRY).capacityJPerK();
    }

    /** Goes on over an hour. */
    void over(int index) {
        hour = index;
        double beginS = hour * Hours.HOUR_S;
        over(beginS, beginS + Hours.HOUR_S, 0);
        if (!Double.isFinite(state.nodeC(Network.SLURRY))) {
            throw new EngineFailure(
                    "the fast engine could not go on at hour " + hour + ": the slurry's temperature is not a number");
        }
        layersBehind = true;
    }

    /** Writes the layers into the state. */
    void complete() {
        if (layersBehind) {
            linear.leave(state);
            layersBehind = false;
        }
    }

    /** Makes what belongs to a level when it is first needed: few designs halve an hour twice. The contents of the modes are lost. */
    private void ready(int level) {
        if (lengths[level] == null) {
            lengths[level] = linear.length(Hours.HOUR_S / (1 << level));
            checkpoints[level] = new Checkpoint(network, state, record, linear.content.length, level == 0);
        }
    }

    private void over(double fromS, double toS, int level) {
        if (level < HALVINGS) {
            checkpoints[level].keep(state, record, linear.content);
        }
        if (!step(fromS, toS, level)) {
            ready(level + 1);
            checkpoints[level].restore(state, record, linear.content);
            double middleS = 0.5 * (fromS + toS);
            over(fromS, middleS, level + 1);
            over(middleS, toS, level + 1);
        }
    }

    /** One step; false, and nothing to rely on, when it should be shorter. */
    private boolean step(double fromS, double toS, int level) {
        StepLength length = lengths[level];
        double middleS = 0.5 * (fromS + toS);
        double beginC = state.nodeC(Network.SLURRY);
        Interval interval = interval(fromS, toS);
        network.enter(interval);
        live.toRoomsNow(state, toRoomsW);
        boolean tooLong = linear.foresee(middleS, length, state, toRoomsW);
        if (tooLong && level < HALVINGS) {
            return false;
        }
        double quickJPerK = Math.max(0, linear.straightJPerK - 0.5 * length.stepS * length.quickWPerK);
        live.meet(middleS, length, beginC, quickJPerK);
        while (true) {
            live.over(interval, state);
            if (interval.endS() >= toS) {
                break;
            }
            interval = interval(interval.endS(), toS);
            network.enter(interval);
        }
        double meanC = live.slurryKs / length.stepS;
        double riseK = state.nodeC(Network.SLURRY) - beginC;
        double takenJ = linear.taken(meanC, riseK);
        double missedJ = takenJ
                - linear.meanW * length.stepS
                - length.quickWPerK * length.stepS * (meanC - beginC)
                - quickJPerK * riseK;
        double allowedJ = Math.max(TOLERANCE_K * slurryJPerK, TOLERANCE_SHARE * Math.abs(takenJ));
        boolean good = Math.abs(missedJ) <= allowedJ && Math.abs(riseK) <= MOST_RISE_K;
        if (!good && level < HALVINGS) {
            return false;
        }
        linear.accept(meanC, riseK, record.meters(), state);
        linear.correctRooms(live.toRoomJ, toRoomsW, length.stepS, state);
        state.setNodeC(Network.SLURRY, state.nodeC(Network.SLURRY) - missedJ / slurryJPerK);
        return true;
    }

    private Interval interval(double fromS, double toS) {
        if (fromS < askedJumpS || fromS >= nextJumpS) {
            askedJumpS = fromS;
            nextJumpS = network.nextJumpS(fromS);
        }
        return new Interval(fromS, Math.min(toS, nextJumpS), hour);
    }
}
