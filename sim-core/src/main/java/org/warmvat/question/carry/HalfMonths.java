package org.warmvat.question.carry;

import java.util.ArrayList;
import java.util.List;
import org.warmvat.question.Window;
import org.warmvat.tank.Course;

/** A window by halves of months, with and without a backup. */
final class HalfMonths {

    private static final int HOURS_PER_DAY = 24;
    private static final double KWH_PER_W_H = 1e-3;
    private static final int SECOND_HALF = 16;

    private HalfMonths() {}

    static List<CarryResult.Half> of(Window window, Course with, Course without) {
        List<CarryResult.Half> halves = new ArrayList<>();
        int from = 0;
        for (int day = 1; day <= window.days(); day++) {
            int dayOfMonth = window.date(day).getDayOfMonth();
            if (day == window.days() || dayOfMonth == 1 || dayOfMonth == SECOND_HALF) {
                halves.add(half(window, with, without, from, day));
                from = day;
            }
        }
        return halves;
    }

    private static CarryResult.Half half(Window window, Course with, Course without, int fromDay, int toDay) {
        int from = fromDay * HOURS_PER_DAY;
        int to = toDay * HOURS_PER_DAY;
        return new CarryResult.Half(
                window.date(fromDay),
                window.date(toDay - 1),
                KWH_PER_W_H * sum(with.heat().solarW(), from, to),
                KWH_PER_W_H * sum(with.heat().backupW(), from, to),
                KWH_PER_W_H * sum(with.heat().needW(), from, to),
                sum(without.shortHours(), from, to));
    }

    static double sum(double[] values, int from, int to) {
        double sum = 0;
        for (int i = from; i < to; i++) {
            sum += values[i];
        }
        return sum;
    }
}
