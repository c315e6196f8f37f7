package org.warmvat.design.season;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Exact: what is in force on each day, by hand (equations 12.1 to 12.3). */
class SeasonTableTest {

    private static final Spell.Runs AS_BEFORE = new Spell.Runs(Optional.empty(), Optional.empty(), Optional.empty());
    private static final OptionalDouble NONE = OptionalDouble.empty();

    private static Spell spell(String from, String to, int ramp, OptionalDouble setpointC, OptionalDouble feed) {
        return spell(from, to, ramp, setpointC, Optional.empty(), feed, Map.of(), AS_BEFORE);
    }

    private static Spell spell(
            String from,
            String to,
            int ramp,
            OptionalDouble setpointC,
            Optional<Minimum> minimum,
            OptionalDouble feed,
            Map<String, Double> feedstocks,
            Spell.Runs runs) {
        return new Spell(
                Optional.of(from + " to " + to),
                MonthDay.parse("--" + from),
                MonthDay.parse("--" + to),
                ramp,
                new Spell.HeldAt(setpointC, NONE, minimum),
                new Spell.Fed(feed, feedstocks),
                NONE,
                runs);
    }

    private static SeasonTable table(Spell... spells) {
        return table(10, spells);
    }

    private static SeasonTable table(int grace, Spell... spells) {
        return new SeasonTable(
                new SeasonCalendar(List.of(spells), grace),
                new SeasonTable.Base(36, 1, new Minimum.BelowSetpoint(2), 60, List.of("scraps", "greens"), true, true));
    }

    private static int day(int month, int day) {
        return LocalDate.of(2025, month, day).getDayOfYear() - 1;
    }

    private static OptionalDouble at(double value) {
        return OptionalDouble.of(value);
    }

    @Test
    void aSpellHoldsAcrossNewYearBothEndsIncluded() {
        SeasonTable rest = table(spell("11-16", "03-10", 0, at(15), at(0)));
        assertEquals(36, rest.on(day(11, 15)).setpointC());
        assertEquals(15, rest.on(day(11, 16)).setpointC());
        assertEquals(15, rest.on(day(1, 1)).setpointC());
        assertEquals(15, rest.on(day(3, 10)).setpointC());
        assertEquals(36, rest.on(day(3, 11)).setpointC());
        assertEquals(13, rest.on(day(12, 24)).minimumC());
        assertEquals(0, rest.on(day(2, 28)).waterFactor());
        assertEquals(0, rest.on(day(2, 28)).feedstockFactor(1));
        assertEquals(1, rest.on(day(6, 1)).feedstockFactor(1));
        assertEquals(115, spell("11-16", "03-10", 0, NONE, NONE).lengthDays());
        assertEquals(1, spell("07-01", "07-01", 0, NONE, NONE).lengthDays());
    }

    @Test
    void laterSpellsWinNumberByNumber() {
        SeasonTable two = table(
                spell("05-01", "09-30", 0, at(38), at(2)),
                spell(
                        "07-01",
                        "07-31",
                        0,
                        NONE,
                        Optional.of(new Minimum.At(30)),
                        at(0.5),
                        Map.of("greens", 3.0),
                        AS_BEFORE));
        assertEquals(38, two.on(day(7, 15)).setpointC());
        assertEquals(0.5, two.on(day(7, 15)).waterFactor());
        assertEquals(1.5, two.on(day(7, 15)).feedstockFactor(1));
        assertEquals(0.5, two.on(day(7, 15)).feedstockFactor(0));
        assertEquals(30, two.on(day(7, 15)).minimumC());
        assertEquals(36, two.on(day(8, 15)).minimumC());
        assertEquals(2, two.largest(day -> two.on(day).waterFactor()));
    }

    /** Day i of n is i/n of the way; at the end of the spell values jump. */
    @Test
    void aRampRunsInStepsAtMidnight() {
        SeasonTable ramp = table(spell("04-01", "04-10", 4, at(40), at(0)));
        assertEquals(36, ramp.on(day(3, 31)).setpointC());
        assertEquals(37, ramp.on(day(4, 1)).setpointC());
        assertEquals(39, ramp.on(day(4, 3)).setpointC());
        assertEquals(40, ramp.on(day(4, 4)).setpointC());
        assertEquals(40, ramp.on(day(4, 10)).setpointC());
        assertEquals(36, ramp.on(day(4, 11)).setpointC());
        assertEquals(0.75, ramp.on(day(4, 1)).waterFactor());
        assertEquals(1, ramp.on(day(4, 11)).waterFactor());
    }

    @Test
    void aRampStartsFromAnotherRamp() {
        SeasonTable two = table(spell("04-01", "04-20", 10, at(46), NONE), spell("04-06", "04-20", 5, at(31), NONE));
        assertEquals(41, two.on(day(4, 5)).setpointC(), 1e-12);
        assertEquals(39, two.on(day(4, 6)).setpointC(), 1e-12);
        assertEquals(31, two.on(day(4, 10)).setpointC());
    }

    @Test
    void rampsThatLeanOnOneAnotherRoundTheYearAreRefused() {
        Spell summer = spell("04-01", "09-30", 183, at(38), NONE);
        Spell winter = spell("10-01", "03-31", 182, at(20), NONE);
        assertEquals(38, table(summer, winter).on(day(9, 30)).setpointC());
        // each begins on a day on which the other is still on its way
        Spell first = spell("10-01", "06-30", 200, at(20), NONE);
        Spell second = spell("03-01", "11-30", 270, at(38), NONE);
        assertEquals(
                "the ramps of setpoint_c begin one where the other ends, all round the year, expected a day that is in no"
                        + " ramp",
                assertThrows(IllegalArgumentException.class, () -> table(first, second))
                        .getMessage());
    }

    @Test
    void graceFollowsARiseAndARestart() {
        SeasonTable rest = table(spell("11-16", "03-10", 0, at(15), at(0)));
        assertFalse(rest.isGrace(day(3, 10)));
        assertTrue(rest.isGrace(day(3, 11)));
        assertTrue(rest.isGrace(day(3, 20)));
        assertFalse(rest.isGrace(day(3, 21)));
        assertFalse(rest.isGrace(day(11, 16)));
        Spell.Runs off = new Spell.Runs(Optional.empty(), Optional.of(false), Optional.empty());
        SeasonTable restart = table(3, spell("12-20", "12-31", 0, NONE, Optional.empty(), NONE, Map.of(), off));
        assertTrue(restart.isGrace(day(1, 1)));
        assertTrue(restart.isGrace(day(1, 3)));
        assertFalse(restart.isGrace(day(1, 4)));
        assertFalse(restart.on(day(12, 31)).isBackupOn());
        assertTrue(restart.on(day(12, 31)).isSolarOn());
    }

    /** A rise of exactly 1 K gives no grace; a ramp of half a kelvin a day does from its third day on, for all its length. */
    @Test
    void aSlowRampGivesGraceWhenItHasRisenByMoreThanAKelvin() {
        assertFalse(table(spell("04-01", "04-30", 0, at(37), NONE)).isGrace(day(4, 1)));
        SeasonTable slow = table(spell("04-01", "05-30", 20, at(46), NONE));
        assertFalse(slow.isGrace(day(4, 2)));
        assertTrue(slow.isGrace(day(4, 3)));
        assertTrue(slow.isGrace(day(4, 20)));
        assertTrue(slow.isGrace(day(4, 27)));
        assertFalse(slow.isGrace(day(4, 28)));
    }

    @Test
    void spellsRefuseWhatIsNoSpell() {
        assertEquals(
                "from 02-29, expected a day of every year",
                assertThrows(IllegalArgumentException.class, () -> spell("02-29", "03-10", 0, NONE, NONE))
                        .getMessage());
        assertEquals(
                "ramp_days 4, expected up to the length of the spell, 3 days",
                assertThrows(IllegalArgumentException.class, () -> spell("04-01", "04-03", 4, NONE, NONE))
                        .getMessage());
        assertThrows(IllegalArgumentException.class, () -> spell("04-01", "04-03", 0, at(80), NONE));
        assertThrows(IllegalArgumentException.class, () -> spell("04-01", "04-03", 0, NONE, at(3.1)));
        Spell twice = spell("04-01", "04-03", 0, NONE, NONE);
        assertThrows(IllegalArgumentException.class, () -> new SeasonCalendar(List.of(twice, twice), 10));
    }
}
