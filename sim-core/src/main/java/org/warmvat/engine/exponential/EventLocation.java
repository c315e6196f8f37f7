package org.warmvat.engine.exponential;

import org.warmvat.network.Margin;
import org.warmvat.network.Network;
import org.warmvat.network.State;
import org.warmvat.network.Switch;

/**
 * Finds the first switching within a segment on its closed form: crossings by false position (the Illinois variant: Dowell and Jarratt,
 * BIT 11 (1971) 168-174), and crests between two ends that both lack.
 */
final class EventLocation {

    /** A switching is placed until its margin is this far beyond its threshold at most, K. */
    static final double PLACED_K = 1e-6;

    /** Margins so little short of their threshold count as reached where another has just been placed. */
    static final double HAIR_K = 2e-6;

    /** Or until its place is known to this share of the segment. */
    private static final double PLACED = 1e-12;

    /** A decay stronger than this over the segment is taken out of the search by its own scale of time. */
    private static final double BENT = 0.05;

    /** False position stalls on a margin that grazes: bisection from here on. */
    private static final int MOST_FALSE_POSITIONS = 12;

    private static final int MOST_LOOKS = 80;

    /** A crest is placed to this, s: its height is then known to less than a hair. */
    private static final double CREST_S = 0.5;

    /** What moves at the place found: a switch, or none where only a heater's corner was met or nothing at all. */
    Switch mover;

    private final StarSegment segment;
    private final FedStocks stocks;
    private final Switch[] switches;
    private final State seen;
    private final State startSpeed;
    private final State endSpeed;
    private final State turning;
    private State begin;
    private double lengthS;
    private boolean isElsewhere;
    private boolean startSpeedKnown;
    private boolean endSpeedKnown;
    private double firstS;

    EventLocation(Network network, StarSegment segment, FedStocks stocks) {
        this.segment = segment;
        this.stocks = stocks;
        switches = network.switches().toArray(Switch[]::new);
        seen = network.initialState();
        startSpeed = network.initialState();
        endSpeed = network.initialState();
        turning = network.initialState();
    }

    /**
     * Finds the first switching or corner.
     *
     * @param beginning state at the beginning
     * @param left longest time
     * @param end slurry, circuits and stocks at the time found, written; deviations of the segment are integrated up to it
     * @return the time, the longest where nothing moves
     */
    double first(State beginning, double left, State end) {
        begin = beginning;
        lengthS = left;
        mover = null;
        firstS = left;
        startSpeedKnown = false;
        endSpeedKnown = false;
        look(left, end);
        isElsewhere = false;
        for (Switch one : switches) {
            if (one.canMove(beginning)) {
                boolean on = beginning.isOn(one.number());
                double at = on ? firstOf(one.margins(true), end) : lastOf(one.margins(false), end);
                if (at < firstS) {
                    firstS = at;
                    mover = one;
                }
            }
        }
        for (LiveCircuit circuit : segment.circuits) {
            if (circuit.band >= 0) {
                corners(circuit, end);
            }
        }
        if (isElsewhere) {
            look(firstS, end);
        }
        segment.integrate(firstS);
        return firstS;
    }

    private void look(double s, State into) {
        segment.look(s, into);
        stocks.look(s, into);
        isElsewhere = true;
    }

    /** Stopping: the first margin reached. */
    private double firstOf(Margin[] any, State end) {
        double first = Double.POSITIVE_INFINITY;
        for (Margin margin : any) {
            double atEnd = margin.at(end);
            if (atEnd >= 0) {
                first = Math.min(first, crossing(margin, 1, lengthS, atEnd));
            } else {
                double crestS = crest(margin, atEnd, end);
                if (crestS > 0) {
                    first = Math.min(first, crossing(margin, 1, crestS, margin.at(seen)));
                }
            }
        }
        return first;
    }

    /** Starting: the last reached of those that lack, if all hold there. */
    private double lastOf(Margin[] all, State end) {
        double last = 0;
        for (Margin margin : all) {
            if (margin.at(begin) < 0) {
                double atEnd = margin.at(end);
                double withinS = lengthS;
                if (atEnd < 0) {
                    withinS = crest(margin, atEnd, end);
                    if (withinS <= 0) {
                        return Double.POSITIVE_INFINITY;
                    }
                    atEnd = margin.at(seen);
                }
                last = Math.max(last, crossing(margin, 1, withinS, atEnd));
            }
        }
        look(last, seen);
        for (Margin margin : all) {
            if (margin.at(seen) < -HAIR_K) {
                return Double.POSITIVE_INFINITY;
            }
        }
        return last;
    }

    /**
     * When a margin that lacks at both ends turns on the way, and is reached there; 0 where it is not. What was seen last is then that
     * place.
     */
    private double crest(Margin margin, double atEnd, State end) {
        knowStartSpeed();
        double rise = margin.speed(startSpeed);
        if (!(rise > 0 && margin.at(begin) + rise * lengthS > 0)) {
            return 0;
        }
        if (!endSpeedKnown) {
            segment.speeds(lengthS, end, endSpeed);
            stocks.speeds(endSpeed);
            endSpeedKnown = true;
        }
        double fall = margin.speed(endSpeed);
        return fall < 0 && atEnd - fall * lengthS > 0 ? turning(margin, rise, fall) : 0;
    }

    private void knowStartSpeed() {
        if (!startSpeedKnown) {
            segment.speeds(startSpeed);
            stocks.speeds(startSpeed);
            startSpeedKnown = true;
        }
    }

    /** Where a margin whose speed changes sign is reached; 0 where it is not. */
    private double turning(Margin margin, double rise, double fall) {
        double low = 0;
        double high = lengthS;
        double lowSpeed = rise;
        double highSpeed = fall;
        while (high - low > CREST_S) {
            double share = Math.min(0.9, Math.max(0.1, lowSpeed / (lowSpeed - highSpeed)));
            double at = low + share * (high - low);
            look(at, seen);
            if (margin.at(seen) >= 0) {
                return at;
            }
            segment.speeds(at, seen, turning);
            stocks.speeds(turning);
            double speed = margin.speed(turning);
            if (speed > 0) {
                low = at;
                lowSpeed = speed;
            } else {
                high = at;
                highSpeed = speed;
            }
        }
        return 0;
    }

    /** Where the water meets a corner of its heater's band. */
    private void corners(LiveCircuit circuit, State end) {
        Margin fading = circuit.fading;
        Margin spent = circuit.spent;
        if (circuit.band == 0) {
            corner(fading, 1, end);
        } else if (circuit.band == 2) {
            corner(spent, -1, end);
        } else {
            corner(fading, -1, end);
            corner(spent, 1, end);
        }
    }

    private void corner(Margin margin, int sign, State end) {
        double atEnd = sign * margin.at(end);
        if (atEnd > 0) {
            double at = crossing(margin, sign, lengthS, atEnd);
            if (at < firstS) {
                firstS = at;
                mover = null;
            }
        }
    }

    /**
     * When a margin, times a sign, rises to 0, and never short of it: false position on a scale on which the fastest decay that it feels is a
     * straight line, {@code x = 1 - exp(-rate t)}.
     */
    private double crossing(Margin margin, int sign, double withinS, double atEnd) {
        double rate = 0;
        for (LiveCircuit circuit : segment.circuits) {
            if (margin.looksAt(circuit.node)) {
                rate = Math.max(rate, segment.ratePerS(circuit));
            }
        }
        boolean bent = rate * withinS > BENT;
        double low = 0;
        double high = bent ? 1 - Math.exp(-rate * withinS) : withinS;
        double lowK = Math.min(sign * margin.at(begin), -Double.MIN_NORMAL);
        double highK = Math.max(atEnd, Double.MIN_NORMAL);
        double highS = withinS;
        double actualHighK = atEnd;
        int side = 0;
        for (int i = 0; i < MOST_LOOKS && actualHighK > PLACED_K && high - low > PLACED * high; i++) {
            double x = (low * highK - high * lowK) / (highK - lowK);
            if (!(x > low && x < high) || i > MOST_FALSE_POSITIONS) {
                x = 0.5 * (low + high);
            }
            double at = bent ? -Math.log(1 - x) / rate : x;
            look(at, seen);
            double k = sign * margin.at(seen);
            if (k < 0) {
                low = x;
                lowK = k;
                highK *= side < 0 ? 0.5 : 1;
                side = -1;
            } else {
                high = x;
                highK = Math.max(k, Double.MIN_NORMAL);
                actualHighK = k;
                highS = at;
                lowK *= side > 0 ? 0.5 : 1;
                side = 1;
            }
        }
        return highS;
    }
}
