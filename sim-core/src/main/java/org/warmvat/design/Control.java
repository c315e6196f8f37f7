package org.warmvat.design;

/**
 * What the contents are held at.
 *
 * @param setpointC set-point, C, 5..75
 * @param bandK whole width of the thermostat's band, K, 0.05..20 (equation 6.2)
 * @param minimum temperature below which an hour is short, -10 C up to the set-point
 * @param electronicsW electric power of the controls, always on, W, 0..1000
 * @param dailyChange changes within 24 h that are reported
 */
public record Control(double setpointC, double bandK, Minimum minimum, double electronicsW, DailyChange dailyChange) {

    /** Refuses numbers out of range and a floor above the set-point. */
    public Control {
        Ranges.within("set-point in C", setpointC, 5, 75);
        Ranges.within("thermostat band in K", bandK, 0.05, 20);
        double floorC = minimum.celsius(setpointC);
        if (floorC != Double.NEGATIVE_INFINITY) {
            Ranges.within("floor temperature in C", floorC, -10, setpointC);
        }
        Ranges.within("electronics in W", electronicsW, 0, 1000);
    }

    /** A control with a stated minimum temperature, C. */
    public Control(double setpointC, double bandK, double floorC, double electronicsW, DailyChange dailyChange) {
        this(setpointC, bandK, new Minimum.At(floorC), electronicsW, dailyChange);
    }

    /** The minimum at the set-point, C; negative infinity where no hour is short. */
    public double floorC() {
        return minimum.celsius(setpointC);
    }

    /**
     * Changes of the contents within 24 h that are reported (equation 7.6).
     *
     * @param noticeK the smaller one, K, 0.01..20
     * @param warningK the larger one, K, from the smaller one to 20
     */
    public record DailyChange(double noticeK, double warningK) {

        /** Refuses numbers out of range. */
        public DailyChange {
            Ranges.within("daily change to notice in K", noticeK, 0.01, 20);
            Ranges.within("daily change to warn of in K", warningK, noticeK, 20);
        }
    }
}
