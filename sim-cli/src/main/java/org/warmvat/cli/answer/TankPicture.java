package org.warmvat.cli.answer;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.warmvat.cli.plot.Drawing;
import org.warmvat.cli.plot.TankDrawing;
import org.warmvat.cli.plot.TankSection;
import org.warmvat.cli.plot.TankSection.Part;
import org.warmvat.cli.words.Numerals;
import org.warmvat.cli.words.Words;
import org.warmvat.design.Design;
import org.warmvat.design.envelope.Fitting;
import org.warmvat.design.envelope.Layer;
import org.warmvat.design.envelope.Material;
import org.warmvat.design.gas.Gas;
import org.warmvat.design.heating.BackupCircuit;
import org.warmvat.design.heating.Coil;
import org.warmvat.design.surroundings.Place;
import org.warmvat.design.surroundings.StandsOn;
import org.warmvat.design.tank.Shape;
import org.warmvat.design.tank.Tank;

/** The tank of a design, drawn to scale. */
final class TankPicture {

    /** File name without ending. */
    static final String NAME = "tank";

    /** What conducts less than this insulates, what conducts more than that is metal, W/(m K): all insulating materials of the
     * library lie below the one, all metals above the other. */
    private static final double INSULATES_W_PER_M_K = 0.1;

    private static final double METAL_W_PER_M_K = 10;

    private TankPicture() {}

    /** The picture. */
    static Drawing of(Design design) {
        Tank tank = design.tank();
        TankSection.Vessel vessel = new TankSection.Vessel(
                widthM(tank.shape()),
                tank.liquidDepthM(),
                tank.headspaceHeightM(),
                tank.standsOn() == StandsOn.GROUND,
                design.backup()
                        .filter(backup -> backup.through() instanceof BackupCircuit.Immersed)
                        .isPresent());
        TankSection.Collector collector = design.solar()
                .map(solar -> new TankSection.Collector(
                        solar.collector().areaM2(), solar.collector().plane().tiltDeg()))
                .orElse(new TankSection.Collector(0, 0));
        return TankDrawing.of(
                NAME,
                "The tank, cut open, to scale",
                "Drawn from the design: sizes, layers and collector to scale, the collector as if it were square. Legs, coils, paddle,"
                        + " auger, outlet and gas neck stand at usual places: the design does not say where they are.",
                new TankSection(
                        vessel,
                        sheets(design.envelope().wall()),
                        sheets(design.envelope().lid()),
                        sheets(design.envelope().floor()),
                        collector,
                        words(design)));
    }

    private static double widthM(Shape shape) {
        return shape instanceof Shape.Box box
                ? Math.max(box.innerLengthM(), box.innerWidthM())
                : ((Shape.UprightCylinder) shape).innerDiameterM();
    }

    private static List<TankSection.Sheet> sheets(List<Layer> layers) {
        return layers.stream()
                .map(layer -> new TankSection.Sheet(layer.thicknessM(), kind(layer.material())))
                .toList();
    }

    private static TankSection.Kind kind(Material material) {
        double conductivity = material.conductivityWPerMK();
        return conductivity < INSULATES_W_PER_M_K
                ? TankSection.Kind.INSULATION
                : conductivity > METAL_W_PER_M_K ? TankSection.Kind.METAL : TankSection.Kind.OTHER;
    }

    private static Map<Part, String> words(Design design) {
        Map<Part, String> words = new EnumMap<>(Part.class);
        Tank tank = design.tank();
        words.put(
                Part.CONTENTS,
                "slurry: " + litres(tank.liquidVolumeM3()) + ", " + inside(tank.shape()) + ", "
                        + Words.fixed(tank.liquidDepthM(), 2) + " m deep, kept at "
                        + Words.celsius(design.control().setpointC()));
        words.put(
                Part.GAS_SPACE,
                "gas space: " + litres(tank.headspaceVolumeM3()) + ", " + Words.fixed(tank.headspaceHeightM(), 2)
                        + " m high");
        words.put(Part.WALL, "wall: " + layers(design.envelope().wall()));
        words.put(Part.LID, "lid: " + layers(design.envelope().lid()));
        words.put(
                Part.BASE,
                "base: " + layers(design.envelope().floor())
                        + (tank.standsOn() == StandsOn.GROUND ? "; on the ground" : "; on legs") + place(tank.place()));
        addMachines(design, words);
        return words;
    }

    private static void addMachines(Design design, Map<Part, String> words) {
        design.solar().ifPresent(solar -> {
            words.put(Part.SOLAR_COIL, "solar coil: " + coil(solar.coil()));
            if (solar.collector().areaM2() > 0) {
                words.put(
                        Part.COLLECTOR,
                        "collector: " + Numerals.six(solar.collector().areaM2()) + " m², tilted "
                                + Words.fixed(solar.collector().plane().tiltDeg(), 0) + "°");
            }
        });
        design.backup().ifPresent(backup -> words.put(Part.BACKUP, backup(backup)));
        if (design.mixer().electricW() > 0 && design.mixer().minutesPerHour() > 0) {
            words.put(
                    Part.MIXER,
                    "paddle: " + Words.number(design.mixer().electricW()) + " W, "
                            + Words.fixed(design.mixer().minutesPerHour(), 0) + " minutes an hour");
        }
        words.put(
                Part.FEED, "feed auger: " + Numerals.six(design.feed().totalKgPerDay()) + " kg a day, water included");
        words.put(Part.OUTLET, "outlet" + pipe(design));
        words.put(
                Part.GAS_NECK,
                "gas neck"
                        + design.gas()
                                .flatMap(Gas::holder)
                                .map(holder -> ", to a holder of " + Numerals.six(holder.usefulM3()) + " m³")
                                .orElse(""));
    }

    private static String place(Place place) {
        if (place instanceof Place.Indoors indoors) {
            return ", in a room of " + Words.celsius(indoors.roomC());
        }
        return place.isSheltered() ? ", in a shelter" : "";
    }

    private static String litres(double m3) {
        return m3 >= 10 ? Words.number(m3) + " m³" : Words.number(m3 * 1000) + " litres";
    }

    private static String inside(Shape shape) {
        return shape instanceof Shape.Box box
                ? Words.fixed(box.innerLengthM(), 2) + " by " + Words.fixed(box.innerWidthM(), 2) + " m inside"
                : Words.fixed(widthM(shape), 2) + " m across inside";
    }

    private static String layers(List<Layer> layers) {
        return layers.stream()
                .map(layer -> Numerals.six(layer.thicknessM() * 1000) + " mm "
                        + layer.material().spelt())
                .collect(Collectors.joining(", "));
    }

    private static String coil(Coil coil) {
        return Numerals.six(coil.areaM2()) + " m²";
    }

    private static String backup(BackupCircuit backup) {
        String rated = Numerals.six(backup.ratedW()) + " W";
        return backup.through() instanceof BackupCircuit.Circuit circuit
                ? "backup heater: " + rated + ", through a coil of " + coil(circuit.coil())
                : "backup heater: " + rated + ", an element in the slurry";
    }

    private static String pipe(Design design) {
        return design.fittings().stream()
                .filter(fitting -> fitting.name().contains("outlet") && fitting instanceof Fitting.Pipe)
                .map(fitting -> ((Fitting.Pipe) fitting).pipe().boreM() * 1000)
                .findFirst()
                .map(mm -> ": " + Numerals.six(mm) + " mm bore")
                .orElse("");
    }
}
