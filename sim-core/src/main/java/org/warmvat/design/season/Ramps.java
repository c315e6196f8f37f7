package org.warmvat.design.season;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;

/**
 * One number of the calendar that may run to its new value over some days (equation 12.2): on day i of n it stands {@code i/n} of the
 * way from what was in force on the day before the spell.
 */
final class Ramps {

    private final List<Spell> spells;
    private final Function<Spell, OptionalDouble> key;
    private final double base;
    private final String name;
    private final double[] value = new double[SeasonTable.DAYS];
    private final boolean[] known = new boolean[SeasonTable.DAYS];
    private final boolean[] asked = new boolean[SeasonTable.DAYS];

    Ramps(List<Spell> spells, Function<Spell, OptionalDouble> key, double base, String name) {
        this.spells = spells;
        this.key = key;
        this.base = base;
        this.name = name;
    }

    /** The number on every day. */
    double[] days() {
        for (int day = 0; day < SeasonTable.DAYS; day++) {
            on(day);
        }
        return value;
    }

    private double on(int day) {
        if (known[day]) {
            return value[day];
        }
        if (asked[day]) {
            throw new IllegalArgumentException("the ramps of " + name
                    + " begin one where the other ends, all round the year, expected a day that is in no ramp");
        }
        asked[day] = true;
        value[day] = worked(day);
        known[day] = true;
        return value[day];
    }

    private double worked(int day) {
        for (int i = spells.size() - 1; i >= 0; i--) {
            Spell spell = spells.get(i);
            int dayOf = spell.dayOf(day);
            OptionalDouble own = key.apply(spell);
            if (dayOf > 0 && own.isPresent()) {
                return dayOf >= spell.rampDays() ? own.getAsDouble() : onWay(spell, dayOf, own.getAsDouble());
            }
        }
        return base;
    }

    private double onWay(Spell spell, int dayOf, double own) {
        double before = on(Math.floorMod(spell.firstDay() - 1, SeasonTable.DAYS));
        return before + (own - before) * dayOf / spell.rampDays();
    }
}
