package org.warmvat.feeding;

import java.util.List;
import org.warmvat.design.feeding.Feed;
import org.warmvat.design.feeding.Feedstock;
import org.warmvat.season.InForce;

/**
 * Feedstocks fed together in a day.
 *
 * @param kg fresh mass
 * @param totalSolidsKg total solids in it
 */
record DayOfFeed(double kg, double totalSolidsKg) {

    /** Those that are heated before they are fed, or those that are not, with the calendar's factors. */
    static DayOfFeed of(Feed feed, InForce season, boolean heated) {
        double kg = 0;
        double solidsKg = 0;
        List<Feedstock> feedstocks = feed.feedstocks();
        for (int i = 0; i < feedstocks.size(); i++) {
            Feedstock one = feedstocks.get(i);
            boolean isHeated =
                    feed.hygienisation().filter(h -> h.heats(one.name())).isPresent();
            if (isHeated == heated) {
                kg += one.kgPerDay() * season.today().feedstockFactor(i);
                solidsKg += one.totalSolidsKgPerDay() * season.today().feedstockFactor(i);
            }
        }
        return new DayOfFeed(kg, solidsKg);
    }

    /** Total solids, mass fraction; 0 without feed. */
    double totalSolidsFraction() {
        return kg == 0 ? 0 : totalSolidsKg / kg;
    }
}
