package org.warmvat.account;

import java.util.LinkedHashMap;
import java.util.Map;
import org.warmvat.network.meter.Energy;
import org.warmvat.network.meter.Line;
import org.warmvat.network.meter.Sums;

/**
 * All lines of a day, a month or a whole run.
 *
 * @param label what it is called: 2025-01-31, 2025-01, or "year" for the whole run
 * @param books lines, balances and columns of the tank
 * @param sums what it added up to
 */
public record Period(String label, Books books, Sums sums) {

    /** Length, h. */
    public double hours() {
        return sums.hours();
    }

    /** A line in its unit; 0 where the tank has no part for it, a share of nothing is not a number. */
    public double of(Line line) {
        return sums.of(line);
    }

    /** Whether a part of the tank tells a line. */
    public boolean has(Line line) {
        return books.has(line);
    }

    /** A side of the account of net energy, kWh. */
    public double kWh(Energy side) {
        return sums.kWh(side);
    }

    /** What a meter counted, J, K s or Nm3; 0 when the tank has none of this key. */
    public double counted(String meter) {
        int index = books.network().meters().indexOf(meter);
        return index < 0 ? 0 : sums.meter(index);
    }

    /** How long a watched condition held, h; 0 when nothing watches it. */
    public double watchHours(String watch) {
        for (int i = 0; i < books.network().watches().size(); i++) {
            if (books.network().watches().get(i).name().equals(watch)) {
                return sums.watchS(i) / 3600;
            }
        }
        return 0;
    }

    /**
     * All lines as {@code summary.json} has them: a value under its key, groups as maps; null for what JSON cannot say, which is a share
     * of nothing or something infinite.
     */
    public Map<String, Object> figures() {
        Map<String, Object> figures = new LinkedHashMap<>();
        for (Line line : books.lines()) {
            double value = of(line);
            Map<String, Object> group = line.group().isEmpty() ? figures : inner(figures, line.group());
            Map<String, Object> thing = line.thing().isEmpty() ? group : inner(group, line.thing());
            thing.put(line.key(), Double.isFinite(value) ? value : null);
        }
        return figures;
    }

    @SuppressWarnings("unchecked") // only maps are put under the names of groups and things
    private static Map<String, Object> inner(Map<String, Object> outer, String key) {
        return (Map<String, Object>) outer.computeIfAbsent(key, unused -> new LinkedHashMap<String, Object>());
    }
}
