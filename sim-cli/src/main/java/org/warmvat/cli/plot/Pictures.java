package org.warmvat.cli.plot;

import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
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
        refuseWithoutFonts();
        return drawn(run);
    }

    /** Measures one letter: what fails there is the machine, what fails later is the program. */
    private static void refuseWithoutFonts() throws CannotDraw {
        System.setProperty("java.awt.headless", "true");
        Graphics2D g2 = null;
        try {
            g2 = new BufferedImage(1, 1, BufferedImage.TYPE_INT_RGB).createGraphics();
            g2.getFontMetrics(Palette.TICK).stringWidth("x");
        } catch (LinkageError | InternalError | RuntimeException missing) { // Java has no one exception for it
            throw new CannotDraw(missing);
        } finally {
            if (g2 != null) {
                g2.dispose();
            }
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
