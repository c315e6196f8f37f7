package org.warmvat.design.season;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.warmvat.design.keys.Ranges;

/**
 * The spells of a year (equation 12.1); later ones win over earlier ones, number by number.
 *
 * @param spells may be none; names are unique
 * @param graceDays days after a rise of the set-point or a restart on which hours below the minimum are told apart, 0..90
 */
public record SeasonCalendar(List<Spell> spells, int graceDays) {

    /** Refuses names that return and numbers out of range. */
    public SeasonCalendar {
        spells = List.copyOf(spells);
        Set<String> names = new HashSet<>();
        for (Spell spell : spells) {
            Ranges.stated(
                    names.add(spell.name()), "calendar", "has a spell named " + spell.name() + " twice, expected once");
        }
    }

    /** Whether every day is like every other. */
    public boolean isNone() {
        return spells.isEmpty();
    }
}
