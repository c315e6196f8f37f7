package org.warmvat.envelope;

import org.warmvat.design.Design;
import org.warmvat.design.envelope.Films;
import org.warmvat.network.Chain;
import org.warmvat.network.Interval;
import org.warmvat.network.Network;
import org.warmvat.network.Part;
import org.warmvat.network.State;
import org.warmvat.network.Surroundings;
import org.warmvat.network.meter.Around;
import org.warmvat.network.meter.Balance;
import org.warmvat.network.meter.Line;
import org.warmvat.network.meter.Meter;
import org.warmvat.network.meter.Unit;

/**
 * Walls, lid, floor and edges of a tank with the massless headspace between the slurry's surface, lid and dry wall (equations
 * 2.1 to 2.5 and 2.8). The meters count the heat that each outside face receives from outside: losses are negative.
 */
public final class EnvelopePart implements Part {

    /** Heat lost through the wetted wall and all edges. */
    public static final Line WALL_LOSS = new Line("envelope_loss_kwh/wall", "wall", Unit.KWH);

    /** Heat lost through the wall beside the headspace. */
    public static final Line DRY_WALL_LOSS = new Line("envelope_loss_kwh/dry_wall", "dry wall", Unit.KWH);

    /** Heat lost through the lid. */
    public static final Line LID_LOSS = new Line("envelope_loss_kwh/lid", "lid", Unit.KWH);

    /** Heat lost through the floor. */
    public static final Line FLOOR_LOSS = new Line("envelope_loss_kwh/floor", "base", Unit.KWH);

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
    private final Boundary.Face wallFace;
    private final Boundary.Face lidFace;
    private final Boundary.Face floorFace;
    private int hour = -1;

    /**
     * Adds the envelope to a network.
     *
     * @param design the design
     * @param sun the sun on the tank's faces, prepared once for a weather file
     * @param surroundings what is outside
     * @param around what is around the tank
     * @param assembly the network being gathered
     */
    public EnvelopePart(
            Design design, TankSun sun, Surroundings surroundings, Around around, Network.Assembly assembly) {
        this.surroundings = surroundings;
        EnvelopeParts parts = EnvelopeParts.of(design);
        Films films = design.envelope().films();
        double guessC = design.control().setpointC();
        double adjust = design.adjust().envelope();
        double surfaceWPerK = adjust * films.surfaceWPerM2K() * design.tank().innerPlanAreaM2();
        int headspace = assembly.room("headspace", 0, guessC);
        assembly.exchange(headspace, Network.SLURRY, surfaceWPerK, Network.UNMETERED);
        Edges edges = Edges.of(design);
        int edgeMeter = assembly.meter(around.met(loss(EDGES, WALL_LOSS)));
        wallFace = new Boundary.Face(
                "wall_outside", parts.wallBoundary(), sun::wallWPerM2, surroundings, around.node(), assembly, adjust);
        lidFace = new Boundary.Face(
                "lid_outside", parts.lidBoundary(), sun::lidWPerM2, surroundings, around.node(), assembly, adjust);
        floorFace = new Boundary.Face(
                "floor_outside", parts.floorBoundary(), hour -> 0, surroundings, around.node(), assembly, adjust);
        addChains(design, parts, around, headspace, assembly);
        assembly.exchange(Network.SLURRY, wallFace.node(), adjust * edges.wetWPerK(), edgeMeter);
        assembly.exchange(headspace, wallFace.node(), adjust * edges.dryWPerK(), edgeMeter);
        assembly.part(this);
    }

    /** The layers of wall, base, dry wall and lid, each between its inside and its outer face. */
    private void addChains(
            Design design, EnvelopeParts parts, Around around, int headspace, Network.Assembly assembly) {
        Films films = design.envelope().films();
        double guessC = design.control().setpointC();
        chain(
                assembly,
                around.met(loss(WALL, WALL_LOSS)),
                parts.wall(),
                Network.SLURRY,
                films.wetWPerM2K(),
                wallFace,
                guessC);
        boolean onGround = parts.floorBoundary() instanceof Boundary.Soil;
        Meter floor = loss(FLOOR, FLOOR_LOSS);
        chain(
                assembly,
                onGround ? floor : around.met(floor),
                parts.floor(),
                Network.SLURRY,
                films.wetWPerM2K(),
                floorFace,
                guessC);
        chain(
                assembly,
                around.met(loss(DRY_WALL, DRY_WALL_LOSS)),
                parts.dryWall(),
                headspace,
                films.dryWPerM2K(),
                wallFace,
                guessC);
        chain(assembly, around.met(loss(LID, LID_LOSS)), parts.lid(), headspace, films.dryWPerM2K(), lidFace, guessC);
    }

    private static void chain(
            Network.Assembly assembly,
            Meter meter,
            LayerChain chain,
            int inside,
            double innerFilmWPerM2K,
            Boundary.Face face,
            double guessC) {
        int count = chain.slices().size();
        double[] capacity = new double[count];
        double[] link = new double[count];
        for (int i = 0; i < count; i++) {
            capacity[i] = chain.slices().get(i).capacityJPerK();
            link[i] = face.adjust() * (i == 0 ? chain.innerWPerK(innerFilmWPerM2K) : chain.betweenWPerK(i));
        }
        Chain.Face outer = new Chain.Face(
                chain.outerHalfKPerW() / face.adjust(),
                chain.outerAreaM2(),
                face.film(),
                face.node(),
                assembly.meter(meter));
        int first = assembly.chain(meter.key(), inside, capacity, link, outer, guessC)
                .first();
        for (int i = 0; i < count; i++) {
            assembly.declare().store(first + i, capacity[i], STORED, Balance.SLURRY);
        }
    }

    private static Meter loss(String key, Line line) {
        return Meter.of(key).told(-1, line).hourly(-1, LOSS_W).leaving(Balance.SLURRY, 1);
    }

    @Override
    public void enter(Interval interval) {
        if (hour == interval.hour()) {
            return;
        }
        hour = interval.hour();
        wallFace.enter(hour);
        lidFace.enter(hour);
        floorFace.enter(hour);
    }

    @Override
    public void look(double timeS, State state) {
        double airC = state.nodeC(surroundings.air());
        double windMPerS = surroundings.windMPerS(timeS);
        double skyC = surroundings.weather().skyC(hour, timeS);
        wallFace.look(airC, windMPerS, skyC, state);
        lidFace.look(airC, windMPerS, skyC, state);
        floorFace.look(airC, windMPerS, skyC, state);
    }
}
