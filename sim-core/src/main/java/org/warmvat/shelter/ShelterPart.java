package org.warmvat.shelter;

import java.util.function.IntToDoubleFunction;
import org.warmvat.design.Design;
import org.warmvat.design.envelope.Films;
import org.warmvat.design.surroundings.Shelter;
import org.warmvat.network.Exchange;
import org.warmvat.network.Interval;
import org.warmvat.network.Network;
import org.warmvat.network.Part;
import org.warmvat.network.Source;
import org.warmvat.network.State;
import org.warmvat.network.Surroundings;
import org.warmvat.network.meter.Around;
import org.warmvat.network.meter.Balance;
import org.warmvat.network.meter.Line;
import org.warmvat.network.meter.Meter;
import org.warmvat.network.meter.Unit;
import org.warmvat.physics.PhysicalConstants;

/**
 * The air of a shelter: cover, air change, opening, sun let in, ground (equation 13.5). What the tank loses into it comes from the
 * tank's parts. Meters count the heat that the shelter receives: losses are negative.
 */
public final class ShelterPart implements Part {

    /** Heat of the shelter. */
    public static final Balance SHELTER = new Balance("shelter", "Shelter", Unit.KWH);

    /** Heat that the tank loses into it. */
    public static final Line FROM_TANK = new Line("shelter/from_tank_kwh", "from the tank", Unit.KWH);

    /** Sun let in. */
    public static final Line SUN = new Line("shelter/sun_kwh", "sun let in", Unit.KWH);

    /** Heat lost through the cover, less the sun that it takes up. */
    public static final Line COVER_LOSS = new Line("shelter/cover_loss_kwh", "cover", Unit.KWH);

    /** Heat lost by air change. */
    public static final Line AIR_LOSS = new Line("shelter/air_change_loss_kwh", "air change", Unit.KWH);

    /** Heat lost to the ground. */
    public static final Line GROUND_LOSS = new Line("shelter/ground_loss_kwh", "ground", Unit.KWH);

    /** Heat stored in air and mass. */
    public static final Line STORED = new Line("shelter/stored_kwh", "stored, shelter", Unit.KWH);

    /** Lowest temperature at the end of an hour. */
    public static final Line LEAST_C = new Line("shelter_c/least", "shelter least", Unit.CELSIUS);

    /** Mean temperature. */
    public static final Line MEAN_C = new Line("shelter_c/mean", "shelter mean", Unit.CELSIUS);

    /** Highest temperature at the end of an hour. */
    public static final Line MOST_C = new Line("shelter_c/most", "shelter most", Unit.CELSIUS);

    /** Name of its node. */
    public static final String NODE = "shelter";

    /** View of the sky from a cover, and its emissivity: what a house has on the mean of its faces. */
    private static final double COVER_SKY_VIEW = 0.5;

    private static final double COVER_EMISSIVITY = 0.9;

    private final Shelter shelter;
    private final Films films;
    private final Surroundings surroundings;
    private final IntToDoubleFunction levelSunWPerM2;
    private final int node;
    private final int cover;
    private final Exchange air;
    private final Source sun;
    private int hour;

    /**
     * Adds a shelter to a network.
     *
     * @param design a design whose tank stands in it
     * @param shelter the shelter
     * @param levelSunWPerM2 sun on the level ground by hour, behind what stands in the sky
     * @param surroundings what is outside
     * @param assembly the network being gathered
     */
    public ShelterPart(
            Design design,
            Shelter shelter,
            IntToDoubleFunction levelSunWPerM2,
            Surroundings surroundings,
            Network.Assembly assembly) {
        this.shelter = shelter;
        this.films = design.envelope().films();
        this.surroundings = surroundings;
        this.levelSunWPerM2 = levelSunWPerM2;
        node = assembly.room(NODE, shelter.capacityJPerK(), 0);
        cover = assembly.known("shelter_cover", 0);
        assembly.exchange(node, cover, shelter.coverWPerK(), loss("shelter_cover", COVER_LOSS, assembly));
        air = assembly.exchange(node, surroundings.air(), 0, loss("shelter_air", AIR_LOSS, assembly), opening());
        assembly.exchange(
                node, surroundings.ground(), shelter.groundWPerK(), loss("shelter_ground", GROUND_LOSS, assembly));
        sun = assembly.source(
                node, assembly.meter(Meter.of("shelter_sun").told(SUN).posted(SHELTER, 1)));
        assembly.declare().store(node, shelter.capacityJPerK(), STORED, SHELTER);
        assembly.declare().hourlyC(node, "shelter_c");
        assembly.declare().endsOfHours(node, LEAST_C, MEAN_C, MOST_C);
        assembly.part(this);
    }

    private static int loss(String key, Line line, Network.Assembly assembly) {
        return assembly.meter(Meter.of(key).told(-1, line).posted(SHELTER, 1));
    }

    private Exchange.Opening opening() {
        Shelter.Airing airing = shelter.airing();
        return airing.openedAboveC() == Double.POSITIVE_INFINITY
                ? Exchange.Opening.NEVER
                : new Exchange.Opening(
                        airing.openedAboveC(),
                        Shelter.Airing.OPENING_K,
                        airing.openedChangesPerH() * shelter.airWPerKPerChange());
    }

    /** It as what is around the tank. */
    public Around around() {
        return new Around(node, meter -> meter.told(-1, FROM_TANK).posted(SHELTER, -1));
    }

    @Override
    public void enter(Interval interval) {
        hour = interval.hour();
        sun.set(shelter.cover().sunTransmittance() * shelter.size().floorAreaM2() * levelSunWPerM2.applyAsDouble(hour));
    }

    @Override
    public void look(double timeS, State state) {
        double airC = state.nodeC(surroundings.air());
        double windMPerS = shelter.airing().exposureFactor() * surroundings.windMPerS(timeS);
        air.set(shelter.airing().shutPerH(windMPerS) * shelter.airWPerKPerChange());
        double kelvin = PhysicalConstants.kelvin(airC);
        double convection = films.outerStillWPerM2K() + films.outerPerWindJPerM3K() * windMPerS;
        double radiation =
                4 * COVER_EMISSIVITY * PhysicalConstants.STEFAN_BOLTZMANN_W_PER_M2_K4 * kelvin * kelvin * kelvin;
        double radiantK = COVER_SKY_VIEW * (surroundings.weather().skyC(hour, timeS) - airC);
        double sunWPerM2 = shelter.cover().absorptance() * levelSunWPerM2.applyAsDouble(hour) / 2;
        state.setNodeC(cover, airC + (radiantK * radiation + sunWPerM2) / (convection + radiation));
    }
}
