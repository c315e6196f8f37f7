package org.warmvat.question.payback;

import java.util.List;
import org.warmvat.design.Design;
import org.warmvat.design.Prices;
import org.warmvat.design.envelope.Envelope;
import org.warmvat.design.envelope.Layer;
import org.warmvat.design.heating.BackupCircuit;
import org.warmvat.design.tank.Shape;
import org.warmvat.design.tank.Tank;

/**
 * What of a design is paid by the amount: insulation, collector, coils, heater and tank.
 *
 * @param foamM3 volume of insulation in wall, lid and floor, the corners between them left out, m3
 * @param collectorM2 collector area, m2
 * @param coilM2 area of both coils, m2
 * @param heaterKw rated power of the backup heater, kW
 * @param tankM3 slurry that the tank holds, m3
 */
public record Purchase(double foamM3, double collectorM2, double coilM2, double heaterKw, double tankM3) {

    private static final double W_PER_KW = 1000;

    /** The amounts of a design. */
    public static Purchase of(Design design) {
        Tank tank = design.tank();
        Envelope envelope = design.envelope();
        double wallHeightM = tank.liquidDepthM() + tank.headspaceHeightM();
        double wall = tank.shape() instanceof Shape.UprightCylinder cylinder
                ? rings(envelope, cylinder.innerDiameterM() / 2) * wallHeightM
                : sheets(envelope, envelope.wall()) * tank.innerPerimeterM() * wallHeightM;
        double ends = (sheets(envelope, envelope.lid()) + sheets(envelope, envelope.floor())) * tank.innerPlanAreaM2();
        return new Purchase(
                wall + ends,
                design.solar().map(s -> s.collector().areaM2()).orElse(0.0),
                coilM2(design),
                design.backup().map(BackupCircuit::ratedW).orElse(0.0) / W_PER_KW,
                tank.liquidVolumeM3());
    }

    private static double coilM2(Design design) {
        double solar = design.solar().map(s -> s.coil().areaM2()).orElse(0.0);
        double backup = design.backup()
                .flatMap(BackupCircuit::circuit)
                .map(circuit -> circuit.coil().areaM2())
                .orElse(0.0);
        return solar + backup;
    }

    /** What they cost at the design's prices. */
    public double outlay(Design design) {
        Prices.Outlay outlay = design.prices().outlay();
        return foamM3 * outlay.foamPerM3()
                + collectorM2 * outlay.collectorPerM2()
                + coilM2 * outlay.parts().coilPerM2()
                + heaterKw * outlay.parts().heaterPerKw()
                + tankM3 * outlay.parts().tankPerM3();
    }

    private static double rings(Envelope envelope, double boreM) {
        double radiusM = boreM;
        double areaM2 = 0;
        for (Layer layer : envelope.wall()) {
            double outerM = radiusM + layer.thicknessM();
            if (envelope.rules().isInsulation(layer)) {
                areaM2 += Math.PI * (outerM * outerM - radiusM * radiusM);
            }
            radiusM = outerM;
        }
        return areaM2;
    }

    private static double sheets(Envelope envelope, List<Layer> layers) {
        return layers.stream()
                .filter(envelope.rules()::isInsulation)
                .mapToDouble(Layer::thicknessM)
                .sum();
    }
}
