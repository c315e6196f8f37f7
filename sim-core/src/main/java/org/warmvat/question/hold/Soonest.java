package org.warmvat.question.hold;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import org.warmvat.question.Parallel;

/**
 * Seeks the start from which a temperature is reached soonest, without following every start.
 *
 * <p>A tank that has failed an hour earlier is the colder one ever after, so that from the next start the temperature is reached no
 * more than an hour sooner, counted from the start. Between two starts that are known the hours are therefore bounded from below by
 * the earlier one's; where the bound lies above the soonest so far, nothing in between is followed (branch and bound). Some slack
 * stands for what a solar pump that switches at another moment may do against it.
 */
final class Soonest {

    private static final int COARSE = 24;
    private static final double SLACK_H = 3;

    private final List<Integer> starts;
    private final Following following;
    private final int mostHours;
    /** What is known of each start: hours, or that it takes more than some; NaN where it was not followed. */
    private final double[] hours;

    private double soonest = Double.POSITIVE_INFINITY;

    /** Follows a start. */
    @FunctionalInterface
    interface Following {
        /** Hours until the temperature is reached from a start, absent when it is not within the most hours. */
        OptionalDouble of(int start, int mostHours);
    }

    /**
     * A search.
     *
     * @param starts the weather hours of the starts, in order
     * @param following follows one of them
     * @param mostHours how long one is followed at most
     */
    Soonest(List<Integer> starts, Following following, int mostHours) {
        this.starts = starts;
        this.following = following;
        this.mostHours = mostHours;
        hours = new double[starts.size()];
        Arrays.fill(hours, Double.NaN);
    }

    /** The place of the soonest start, the first of several; the first start where none reaches the temperature. */
    int of(Parallel parallel) {
        List<Integer> next = new ArrayList<>();
        for (int start = 0; start < hours.length; start += COARSE) {
            next.add(start);
        }
        next.add(hours.length - 1);
        while (!next.isEmpty()) {
            follow(next, parallel);
            next = between();
        }
        int place = 0;
        for (int start = 0; start < hours.length; start++) {
            place = hours[start] < hours[place] ? start : place;
        }
        return place;
    }

    private void follow(List<Integer> next, Parallel parallel) {
        int most = (int) Math.min(mostHours, Math.ceil(soonest) + 1);
        List<OptionalDouble> reached = parallel.map(next, start -> following.of(start, most));
        for (int i = 0; i < reached.size(); i++) {
            hours[next.get(i)] = reached.get(i).orElse(mostKnown(most));
            if (reached.get(i).isPresent()) {
                soonest = Math.min(soonest, reached.get(i).getAsDouble());
            }
        }
    }

    /** A start that is not followed to its end takes more than the hours followed; where all were, it never comes. */
    private double mostKnown(int followed) {
        return followed == mostHours ? Double.POSITIVE_INFINITY : followed;
    }

    /** The middles of all stretches in which a sooner start may lie. */
    private List<Integer> between() {
        List<Integer> middles = new ArrayList<>();
        int before = 0;
        for (int start = 1; start < hours.length; start++) {
            if (!Double.isNaN(hours[start])) {
                double least = hours[before] - (starts.get(start) - 1 - starts.get(before));
                if (start - before > 1 && least - SLACK_H < soonest) {
                    middles.add((before + start) / 2);
                }
                before = start;
            }
        }
        return middles;
    }
}
