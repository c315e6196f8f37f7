package org.warmvat.envelope;

import java.util.List;
import org.warmvat.design.Design;
import org.warmvat.design.envelope.Envelope;
import org.warmvat.design.envelope.EnvelopeRules;
import org.warmvat.design.envelope.Layer;
import org.warmvat.design.surroundings.Place;
import org.warmvat.design.surroundings.StandsOn;
import org.warmvat.design.tank.Shape;
import org.warmvat.design.tank.Tank;

/**
 * The four envelope parts of a design: geometry, layers and what each outside face meets (model section 2).
 *
 * @param wall wetted wall
 * @param dryWall wall beside the headspace
 * @param lid lid
 * @param floor floor
 * @param wallBoundary what the wall meets, wet and dry alike
 * @param lidBoundary what the lid meets
 * @param floorBoundary what the floor meets
 */
public record EnvelopeParts(
        LayerChain wall,
        LayerChain dryWall,
        LayerChain lid,
        LayerChain floor,
        Boundary wallBoundary,
        Boundary lidBoundary,
        Boundary floorBoundary) {

    /** View of the sky from an upright wall. */
    private static final double UPRIGHT_SKY_VIEW = 0.5;

    /** The parts of a design. */
    public static EnvelopeParts of(Design design) {
        Tank tank = design.tank();
        Envelope envelope = design.envelope();
        EnvelopeRules rules = envelope.rules();
        return new EnvelopeParts(
                wall(tank, envelope.wall(), tank.liquidDepthM(), rules),
                wall(tank, envelope.wall(), tank.headspaceHeightM(), rules),
                LayerChain.plane(envelope.lid(), tank.innerPlanAreaM2(), rules),
                LayerChain.plane(envelope.floor(), tank.innerPlanAreaM2(), rules),
                wallBoundary(design),
                lidBoundary(design),
                floorBoundary(design));
    }

    private static LayerChain wall(Tank tank, List<Layer> layers, double heightM, EnvelopeRules rules) {
        return tank.shape() instanceof Shape.UprightCylinder cylinder
                ? LayerChain.cylinder(layers, cylinder.innerDiameterM() / 2, heightM, rules)
                : LayerChain.plane(layers, tank.innerPerimeterM() * heightM, rules);
    }

    private static Boundary wallBoundary(Design design) {
        return outdoorsOrRoom(
                design,
                UPRIGHT_SKY_VIEW * design.site().surroundings().horizon().wallSkyFactor());
    }

    private static Boundary lidBoundary(Design design) {
        return outdoorsOrRoom(design, design.site().surroundings().horizon().lidSkyFactor());
    }

    private static Boundary outdoorsOrRoom(Design design, double skyView) {
        Envelope envelope = design.envelope();
        if (design.tank().place() instanceof Place.Outdoors outdoors) {
            boolean open = outdoors.seesSky();
            return new Boundary.Open(
                    new OuterFilm(envelope.films(), envelope.outerFace(), outdoors.windFactor(), open ? skyView : 0),
                    open);
        }
        return room(design);
    }

    private static Boundary room(Design design) {
        return new Boundary.Room(design.envelope().films().indoorWPerM2K());
    }

    private static Boundary floorBoundary(Design design) {
        if (design.tank().standsOn() == StandsOn.GROUND) {
            return new Boundary.Soil(design.envelope().rules().soilResistanceM2KPerW());
        }
        if (design.tank().place() instanceof Place.Outdoors outdoors) {
            OuterFilm film = new OuterFilm(
                    design.envelope().films(), design.envelope().outerFace(), outdoors.floorWindFactor(), 0);
            return new Boundary.Open(film, false);
        }
        return room(design);
    }
}
