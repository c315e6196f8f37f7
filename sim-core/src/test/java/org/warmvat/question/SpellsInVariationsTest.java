package org.warmvat.question;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.warmvat.design.Design;
import org.warmvat.design.season.SeasonTable;
import org.warmvat.sample.LifeDesigns;
import org.warmvat.sample.TankPlan;

/** Exact: what is varied in a design is varied in the spells of its calendar, too. */
class SpellsInVariationsTest {

    @Test
    void theMixerStandsStillOnEveryDay() {
        TankPlan plan = new TankPlan();
        plan.calendar = LifeDesigns.calendar();
        Design drawn = plan.build();
        Design still = Variations.withoutMixing(drawn);
        assertTrue(IntStream.range(0, SeasonTable.DAYS)
                        .mapToDouble(day -> drawn.season().on(day).mixerMinutesPerHour())
                        .distinct()
                        .count()
                > 1);
        assertEquals(
                0,
                IntStream.range(0, SeasonTable.DAYS)
                        .mapToDouble(day -> still.season().on(day).mixerMinutesPerHour())
                        .max()
                        .orElseThrow());
    }

    /** A factor on one feedstock in a spell is a number of the design like any other. */
    @Test
    void aFeedstocksFactorInASpellIsANumberToVary() {
        TankPlan plan = new TankPlan();
        plan.calendar = LifeDesigns.calendar();
        Design drawn = plan.build();
        String key = "calendar[3].feedstocks.garden greens";
        assertEquals(0.5, drawn.number(key));
        assertEquals(1.5, drawn.with(key, 1.5).number(key));
    }
}
