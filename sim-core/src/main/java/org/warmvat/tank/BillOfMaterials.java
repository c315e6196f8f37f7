package org.warmvat.tank;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.warmvat.design.Design;
import org.warmvat.design.envelope.Envelope;
import org.warmvat.design.envelope.Fitting;
import org.warmvat.design.envelope.Layer;
import org.warmvat.design.envelope.Material;
import org.warmvat.design.heating.Coil;
import org.warmvat.design.tank.Shape;
import org.warmvat.design.tank.Tank;

/**
 * What has to be had for a tank, net: corners, laps, joints and waste are left out. A layer of the wall is taken at its middle, one of lid and
 * base at the inner plan.
 */
public final class BillOfMaterials {

    private static final double MM_PER_M = 1000;

    private BillOfMaterials() {}

    /**
     * A line of it.
     *
     * @param what what it is
     * @param amount how much
     * @param unit of the amount
     */
    public record Item(String what, double amount, String unit) {}

    /** A material in a thickness. */
    private record Board(String material, double thicknessM) {}

    /** All of it: boards and sheets from the thickest, then pipes, bars, collector, coils, heater, drives. */
    public static List<Item> of(Design design) {
        List<Item> items = new ArrayList<>(boards(design));
        design.fittings().forEach(fitting -> fitting(fitting, items));
        design.solar().ifPresent(solar -> {
            items.add(new Item("solar collector", solar.collector().areaM2(), "m²"));
            circuit("solar", solar.coil(), solar.loop().pumpW(), items);
        });
        design.backup().ifPresent(backup -> {
            items.add(new Item("backup heater, rated", backup.ratedW(), "W"));
            backup.circuit()
                    .ifPresent(water ->
                            circuit("backup", water.coil(), water.loop().pumpW(), items));
        });
        items.add(new Item(
                "mixer's drive, electric while it turns", design.mixer().electricW(), "W"));
        return items;
    }

    private static void circuit(String which, Coil coil, double pumpW, List<Item> items) {
        items.add(new Item(which + " coil, outer area", coil.areaM2(), "m²"));
        items.add(new Item(which + " pump, electric", pumpW, "W"));
    }

    private static List<Item> boards(Design design) {
        return areasM2(design).entrySet().stream()
                .map(entry -> new Item(
                        Material.spelt(entry.getKey().material()) + ", "
                                + mm(entry.getKey().thicknessM()) + " mm",
                        entry.getValue(),
                        "m²"))
                .toList();
    }

    private static Map<Board, Double> areasM2(Design design) {
        Tank tank = design.tank();
        Envelope envelope = design.envelope();
        Map<Board, Double> areas = new LinkedHashMap<>();
        double outM = 0;
        double heightM = tank.liquidDepthM() + tank.headspaceHeightM();
        for (Layer layer : envelope.wall()) {
            double middleM = outM + layer.thicknessM() / 2;
            areas.merge(board(layer), perimeterM(tank, middleM) * heightM, Double::sum);
            outM += layer.thicknessM();
        }
        for (List<Layer> flat : List.of(envelope.lid(), envelope.floor())) {
            flat.forEach(layer -> areas.merge(board(layer), tank.innerPlanAreaM2(), Double::sum));
        }
        return areas;
    }

    /** Length round the wall at a distance from its inner face. */
    private static double perimeterM(Tank tank, double outM) {
        return tank.innerPerimeterM() + (tank.shape() instanceof Shape.UprightCylinder ? 2 * Math.PI : 8) * outM;
    }

    private static Board board(Layer layer) {
        return new Board(layer.material().name(), layer.thicknessM());
    }

    private static String mm(double metres) {
        double mm = Math.round(metres * MM_PER_M * 10) / 10.0;
        return mm == Math.rint(mm) ? Long.toString((long) mm) : Double.toString(mm);
    }

    private static void fitting(Fitting fitting, List<Item> items) {
        if (fitting instanceof Fitting.Pipe pipe) {
            items.add(new Item(
                    fitting.name() + ": pipe of " + mm(pipe.pipe().boreM()) + " mm bore, insulated "
                            + mm(pipe.pipe().insulationM()) + " mm",
                    pipe.pipe().lengthM(),
                    "m"));
        } else if (fitting instanceof Fitting.Bar bar) {
            items.add(new Item(
                    fitting.name() + ": bars of " + Math.round(bar.bars().sectionM2() * 1e6) + " mm²",
                    bar.bars().count() * bar.bars().lengthM(),
                    "m"));
        }
    }
}
