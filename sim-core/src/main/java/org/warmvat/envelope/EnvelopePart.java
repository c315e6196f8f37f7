package org.warmvat.envelope;

import java.util.List;
import org.warmvat.design.Design;
import org.warmvat.design.Films;
import org.warmvat.network.Balance;
import org.warmvat.network.Flows;
import org.warmvat.network.Interval;
import org.warmvat.network.Line;
import org.warmvat.network.Meter;
import org.warmvat.network.Network;
import org.warmvat.network.SlowPart;
import org.warmvat.network.Surroundings;
import org.warmvat.network.Unit;

/**
 * Walls, lid, floor and edges of a tank with the massless headspace between the slurry's surface, lid and dry wall (equations
 * 2.1 to 2.5 and 2.8). The meters count the heat that each outside face receives from outside: losses are negative.
 */
public final class EnvelopePart implements SlowPart {

    /** Heat lost through the wetted wall and all edges. */
    public static final Line WALL_LOSS = new Line("envelope_loss_kwh/wall", "wall", Unit.KWH);

    /** Heat lost through the wall beside the headspace. */
    public static final Line DRY_WALL_LOSS = new Line("envelope_loss_kwh/dry_wall", "dry wall", Unit.KWH);

    /** Heat lost through the lid. */
    public static final Line LID_LOSS = new Line("envelope_loss_kwh/lid", "lid", Unit.KWH);

    /** Heat lost through the floor. */
    public static final Line FLOOR_LOSS = new Line("envelope_loss_kwh/floor", "floor", Unit.KWH);

    /** Heat stored in the layers. */
    public static final Line STORED = new Line("stored_kwh/envelope", "stored, envelope", Unit.KWH);

    /** Hourly column of all that is lost. */
    public static final String LOSS_W = "loss_w";

    /** Meter of the wetted wall's outer face, J. */
    public static final String WALL = "wall";

    /** Meter of the dry wall's outer face, J. */
    public static final String DRY_WALL = "dry_wall";

    /** Meter of the lid's outer face, J. */
    public static final String LID = "lid";

    /** Meter of the floor's outer face, J. */
    public static final String FLOOR = "floor";

    /** Meter of all edges, J. */
    public static final String EDGES = "edges";

    private final Surroundings surroundings;
    private final int slurry;
    private final int headspace;
    private final Edges edges;
    private final int edgeMeter;
    private final Boundary.Face wallFace;
    private final Boundary.Face lidFace;
    private final Boundary.Face floorFace;
    private final List<Stack> stacks;
    private int hour;

    /** A chain of nodes in the network with its outside face; conductances are worked out once, they are read often. */
    private static final class Stack {
        private final int outerNode;
        private final double outerHalfKPerW;
        private final double outerAreaM2;
        private final Boundary.Face face;
        private final int meter;

        Stack(LayerChain chain, int outerNode, Boundary.Face face, int meter) {
            this.outerNode = outerNode;
            this.face = face;
            this.meter = meter;
            outerHalfKPerW = chain.outerHalfKPerW();
            outerAreaM2 = chain.outerAreaM2();
        }

        void surround(Flows flows) {
            double outerKPerW = outerHalfKPerW + 1 / (face.filmWPerM2K() * outerAreaM2);
            flows.exchange(outerNode, 1 / outerKPerW, face.equivalentC(), meter);
        }
    }

    /**
     * Adds the envelope's nodes to a network whose first node is the slurry.
     *
     * @param design the design
     * @param surroundings what is outside
     * @param assembly the network being gathered
     * @param slurry the slurry's node
     */
    public EnvelopePart(Design design, Surroundings surroundings, Network.Assembly assembly, int slurry) {
        this.surroundings = surroundings;
        this.slurry = slurry;
        EnvelopeParts parts = EnvelopeParts.of(design);
        Films films = design.envelope().films();
        double guessC = design.control().setpointC();
        double surfaceWPerK = films.surfaceWPerM2K() * design.tank().innerPlanAreaM2();
        headspace = assembly.node(new Network.Node("headspace", 0, slurry, guessC, true, surfaceWPerK));
        edges = Edges.of(design);
        edgeMeter = assembly.meter(loss(EDGES, WALL_LOSS));
        wallFace = new Boundary.Face(parts.wallBoundary(), surroundings);
        lidFace = new Boundary.Face(parts.lidBoundary(), surroundings);
        floorFace = new Boundary.Face(parts.floorBoundary(), surroundings);
        stacks = List.of(
                stack(assembly, loss(WALL, WALL_LOSS), parts.wall(), slurry, films.wetWPerM2K(), wallFace, guessC),
                stack(assembly, loss(FLOOR, FLOOR_LOSS), parts.floor(), slurry, films.wetWPerM2K(), floorFace, guessC),
                stack(
                        assembly,
                        loss(DRY_WALL, DRY_WALL_LOSS),
                        parts.dryWall(),
                        headspace,
                        films.dryWPerM2K(),
                        wallFace,
                        guessC),
                stack(assembly, loss(LID, LID_LOSS), parts.lid(), headspace, films.dryWPerM2K(), lidFace, guessC));
    }

    private static Stack stack(
            Network.Assembly assembly,
            Meter meter,
            LayerChain chain,
            int inside,
            double innerFilmWPerM2K,
            Boundary.Face face,
            double guessC) {
        int before = inside;
        for (int i = 0; i < chain.slices().size(); i++) {
            double linkWPerK = i == 0 ? chain.innerWPerK(innerFilmWPerM2K) : chain.betweenWPerK(i);
            double capacityJPerK = chain.slices().get(i).capacityJPerK();
            before = assembly.node(new Network.Node(meter.key(), capacityJPerK, before, guessC, true, linkWPerK));
            assembly.declare().store(before, capacityJPerK, STORED, Balance.SLURRY);
        }
        return new Stack(chain, before, face, assembly.meter(meter));
    }

    private static Meter loss(String key, Line line) {
        return Meter.of(key).told(-1, line).hourly(-1, LOSS_W).leaving(Balance.SLURRY, 1);
    }

    @Override
    public void enter(Interval interval) {
        hour = interval.hour();
        wallFace.enter(hour);
        lidFace.enter(hour);
        floorFace.enter(hour);
    }

    @Override
    public void surround(double timeS, Flows flows) {
        double airC = surroundings.airC(timeS);
        double windMPerS = surroundings.windMPerS(timeS);
        double skyC = surroundings.weather().skyC(hour, timeS);
        wallFace.look(timeS, airC, windMPerS, skyC);
        lidFace.look(timeS, airC, windMPerS, skyC);
        floorFace.look(timeS, airC, windMPerS, skyC);
        for (int i = 0; i < stacks.size(); i++) {
            stacks.get(i).surround(flows);
        }
        flows.exchange(slurry, edges.wetWPerK(), wallFace.equivalentC(), edgeMeter);
        flows.exchange(headspace, edges.dryWPerK(), wallFace.equivalentC(), edgeMeter);
    }
}
