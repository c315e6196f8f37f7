package org.warmvat.design;

import java.util.Collections;
import java.util.List;
import org.warmvat.physics.Require;
import org.warmvat.sun.Horizon;

/**
 * What stands between the sky and a collector or a tank (equations 13.1 and 13.2).
 *
 * @param horizon hills, houses, walls
 * @param shadeByMonth twelve shares of the sun that trees take away, January first, 0..1
 */
public record Shading(Horizon horizon, List<Double> shadeByMonth) {

    /** Open to all sides. */
    public static final Shading NONE = new Shading(Horizon.OPEN, Collections.nCopies(12, 0.0));

    /** Refuses anything but twelve shares. */
    public Shading {
        shadeByMonth = List.copyOf(shadeByMonth);
        Ranges.stated("shade by month has " + shadeByMonth.size() + " values", shadeByMonth.size() == 12, "twelve");
        shadeByMonth.forEach(share -> Require.within("shade of a month", share, 0, 1));
    }

    /** Whether it takes nothing away. */
    public boolean isNone() {
        return horizon.isOpen() && shadeByMonth.stream().allMatch(share -> share == 0);
    }

    /** Share of the sun that trees take away in a month, 1 to 12. */
    public double shade(int month) {
        return shadeByMonth.get(month - 1);
    }
}
