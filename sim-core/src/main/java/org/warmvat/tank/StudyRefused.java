package org.warmvat.tank;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.warmvat.design.Design;
import org.warmvat.weather.Weather;

/** Design, weather and log do not go together, or tell too little; every reason is a whole sentence and says what is needed. */
public final class StudyRefused extends RuntimeException {

    private static final long serialVersionUID = 1L;
    private static final double HOURS_PER_DAY = 24;

    private final transient List<String> faults;

    /** Refuses for some reasons. */
    public StudyRefused(List<String> faults) {
        super(String.join("\n", faults));
        this.faults = List.copyOf(faults);
    }

    /** Refuses for one reason. */
    public StudyRefused(String fault) {
        this(List.of(fault));
    }

    /** Refuses where there is any reason. */
    public static void ifAny(List<String> faults) throws StudyRefused {
        if (!faults.isEmpty()) {
            throw new StudyRefused(faults);
        }
    }

    /** The reasons. */
    public List<String> faults() {
        return faults;
    }

    /** Checks that a design can run in some weather files, each long enough for a warm-up of some days. */
    public static void check(Design design, List<Weather> files, double warmUpDays) throws StudyRefused {
        List<String> faults = new ArrayList<>();
        for (int i = 0; i < files.size(); i++) {
            String which = files.size() == 1 ? "" : "weather file " + (i + 1) + " of " + files.size() + ": ";
            fault(design, files.get(i)).ifPresent(fault -> faults.add(which + fault));
            if (files.get(i).hours() < warmUpDays * HOURS_PER_DAY) {
                faults.add(which + "weather: covers " + files.get(i).hours() + " hours, expected at least the "
                        + (int) Math.ceil(warmUpDays) + " days of the warm-up");
            }
        }
        ifAny(faults);
    }

    /** Checks that a design can run in some weather. */
    public static void check(Design design, Weather weather) throws StudyRefused {
        fault(design, weather).ifPresent(fault -> {
            throw new StudyRefused(fault);
        });
    }

    /** Why a design cannot run in some weather, if so. */
    public static Optional<String> fault(Design design, Weather weather) {
        return design.usesGround() && !GroundTemperature.isKnown(design, weather)
                ? Optional.of(
                        "ground: nothing tells the ground temperature, which this design uses: the weather file has no ground_c"
                                + " column and is shorter than a year; expected ground: {mean_c, amplitude_k, coldest_day} in the"
                                + " design")
                : Optional.empty();
    }
}
