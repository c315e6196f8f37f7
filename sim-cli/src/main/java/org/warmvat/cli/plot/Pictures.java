package org.warmvat.cli.plot;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.warmvat.result.RunResult;

/** Draws all pictures of a run. */
public final class Pictures {

    /** Every name a picture may have; a run has some of them. */
    public static final Set<String> NAMES = Set.of(
            "tank_temperature",
            "heat_by_source",
            "electricity_by_consumer",
            "gas_and_net_energy",
            "winter_week",
            "spring_week",
            "first_week",
            "middle_week");

    private Pictures() {}

    /**
     * Draws the pictures in the order in which they are read.
     *
     * @throws CannotDraw on a machine without fonts or without the parts of Java that draw
     */
    public static List<Picture> of(RunResult run) throws CannotDraw {
        System.setProperty("java.awt.headless", "true");
        try {
            return drawn(run);
        } catch (Throwable missing) { // without fonts Java fails with errors of many kinds, not with one exception
            throw new CannotDraw(missing);
        }
    }

    private static List<Picture> drawn(RunResult run) {
        List<Drawing> drawings = new ArrayList<>(List.of(
                TankTemperature.of(run), HeatBySource.of(run), ElectricityByConsumer.of(run), NetEnergy.of(run)));
        ChosenWeek.of(run).forEach(week -> drawings.add(HourByHour.of(run, week)));
        // each drawing is its own, so the order in which threads take them leaves no trace
        return drawings.parallelStream().map(Rendering::of).toList();
    }
}
