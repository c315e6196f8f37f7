package org.warmvat.design.season;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Windows of the day: overlaps, midnight, edges. */
class DailyScheduleTest {

    private static final double HOUR = 3600;

    @Test
    void oneWindowStaysAsItIs() {
        DailySchedule schedule = DailySchedule.of(List.of(new DailyWindow(8 * HOUR, 3 * HOUR)));
        assertEquals(List.of(new DailySchedule.Span(8 * HOUR, 11 * HOUR)), schedule.spans());
        assertEquals(3 * HOUR, schedule.openSecondsPerDay());
        assertFalse(schedule.isContinuous());
    }

    @Test
    void aWindowAcrossMidnightIsCutInTwo() {
        DailySchedule schedule = DailySchedule.of(List.of(new DailyWindow(22 * HOUR, 8 * HOUR)));
        assertEquals(
                List.of(new DailySchedule.Span(0, 6 * HOUR), new DailySchedule.Span(22 * HOUR, 24 * HOUR)),
                schedule.spans());
        assertEquals(8 * HOUR, schedule.openSecondsPerDay());
    }

    @Test
    void aWindowUpToMidnightLeavesNothingBehindIt() {
        DailySchedule schedule = DailySchedule.of(List.of(new DailyWindow(22 * HOUR, 2 * HOUR)));
        assertEquals(List.of(new DailySchedule.Span(22 * HOUR, 24 * HOUR)), schedule.spans());
    }

    @Test
    void overlapsAndNeighboursCountOnce() {
        DailySchedule schedule = DailySchedule.of(List.of(
                new DailyWindow(10 * HOUR, 2 * HOUR),
                new DailyWindow(8 * HOUR, 3 * HOUR),
                new DailyWindow(12 * HOUR, HOUR),
                new DailyWindow(9 * HOUR, HOUR / 2)));
        assertEquals(List.of(new DailySchedule.Span(8 * HOUR, 13 * HOUR)), schedule.spans());
    }

    @Test
    void wholeDayFromAnyStartIsContinuous() {
        assertTrue(DailySchedule.continuous().isContinuous());
        assertTrue(
                DailySchedule.of(List.of(new DailyWindow(15 * HOUR, 24 * HOUR))).isContinuous());
    }

    @Test
    void startIsOpenAndEndIsClosed() {
        DailySchedule schedule = DailySchedule.of(List.of(new DailyWindow(22 * HOUR, 8 * HOUR)));
        assertTrue(schedule.isOpenAt(22 * HOUR));
        assertTrue(schedule.isOpenAt(0));
        assertFalse(schedule.isOpenAt(6 * HOUR));
        assertTrue(schedule.isOpenAt(Math.nextDown(6 * HOUR)));
        assertFalse(schedule.isOpenAt(Math.nextDown(22 * HOUR)));
    }

    /** Against asking every window for every second in a grid that no edge falls on. */
    @Test
    void agreesWithTheWindowsThemselves() {
        Random random = new Random(7);
        for (int i = 0; i < 200; i++) {
            List<DailyWindow> windows = random.ints(1 + random.nextInt(4), 0, 86_400)
                    .mapToObj(start -> new DailyWindow(start, 1 + random.nextInt(86_400)))
                    .toList();
            DailySchedule schedule = DailySchedule.of(windows);
            for (double second = 0.5; second < DailyWindow.DAY_S; second += 997) {
                double at = second;
                boolean open = windows.stream()
                        .anyMatch(w ->
                                (at - w.startSecondOfDay() + DailyWindow.DAY_S) % DailyWindow.DAY_S < w.durationS());
                assertEquals(open, schedule.isOpenAt(at), windows + " at " + at);
            }
        }
    }

    @Test
    void refusesNothingAndDisorder() {
        assertEquals(
                "spans of a day [], expected disjoint ones in rising order, at least one",
                assertThrows(IllegalArgumentException.class, () -> DailySchedule.of(List.of()))
                        .getMessage());
        List<DailySchedule.Span> touching = List.of(new DailySchedule.Span(0, 10), new DailySchedule.Span(10, 20));
        assertEquals(
                "spans of a day [Span[startS=0.0, endS=10.0], Span[startS=10.0, endS=20.0]], expected disjoint ones in rising order, at least one",
                assertThrows(IllegalArgumentException.class, () -> new DailySchedule(touching))
                        .getMessage());
    }
}
