package org.warmvat.tank;

import java.util.List;
import org.warmvat.design.Design;
import org.warmvat.weather.Weather;

/** Design, weather and log do not go together, or tell too little; every reason is a whole sentence and says what is needed. */
public final class StudyRefused extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final transient List<String> faults;

    /** Refuses for some reasons. */
    public StudyRefused(List<String> faults) {
        super(String.join("\n", faults));
        this.faults = List.copyOf(faults);
    }

    /** The reasons. */
    public List<String> faults() {
        return faults;
    }

    /** Checks that a design can run in some weather. */
    public static void check(Design design, Weather weather) throws StudyRefused {
        if (design.usesGround() && !GroundTemperature.isKnown(design, weather)) {
            throw new StudyRefused(List.of(
                    "ground: nothing tells the ground temperature, which this design uses: the weather file has no ground_c"
                            + " column and is shorter than a year; expected ground: {mean_c, amplitude_k, coldest_day} in the"
                            + " design"));
        }
    }
}
