package org.warmvat.gas;

import org.warmvat.design.gas.Condensate;
import org.warmvat.design.gas.Gas;
import org.warmvat.network.Interval;
import org.warmvat.network.Margin;
import org.warmvat.network.Network;
import org.warmvat.network.Part;
import org.warmvat.network.Source;
import org.warmvat.network.State;
import org.warmvat.network.Surroundings;
import org.warmvat.network.meter.Line;
import org.warmvat.network.meter.Meter;
import org.warmvat.network.meter.Unit;
import org.warmvat.network.meter.Watched;

/** Water that falls out of the gas on its way through a cooler pipe (equation 14.3); stands after the part that makes the gas. */
public final class CondensatePart implements Part {

    /** Water that fell out. */
    public static final Line LITRES = new Line("condensate_litres", "condensate", Unit.LITRES);

    /** The most of a day. */
    public static final Line MOST_LITRES_DAY =
            new Line("condensate_most_litres_day", "condensate, most of a day", Unit.LITRES);

    /** Hours in which gas came through a pipe below 0 °C. */
    public static final Line FROST_HOURS = new Line("condensate_frost_hours", "frost in the gas pipe", Unit.HOURS);

    /** Watch: the pipe stands below 0 °C while gas comes. */
    public static final String FROST = "gas_pipe_frost";

    private static final double PA_PER_HPA = 100;
    private static final double HOUR_S = 3600;

    private final GasPart gas;
    private final double methaneFraction;
    private final Surroundings surroundings;
    private final int pipe;
    private final Source water;
    private double pressurePa;

    /**
     * Adds the pipe to a network.
     *
     * @param design a gas side whose condensate is computed
     * @param gas what makes the gas
     * @param surroundings what is outside
     * @param assembly the network being gathered
     */
    public CondensatePart(Gas design, GasPart gas, Surroundings surroundings, Network.Assembly assembly) {
        this.gas = gas;
        this.surroundings = surroundings;
        methaneFraction = design.methaneFraction();
        pipe = pipe(design.condensate().orElseThrow(), surroundings, assembly);
        int meter = assembly.meter(Meter.of("condensate").told(LITRES).hourly(HOUR_S, "condensate_kg_h"));
        water = assembly.source(Network.NOWHERE, meter);
        assembly.declare().greatestDay(MOST_LITRES_DAY, day -> day.meter(meter));
        assembly.watch(
                Watched.of(FROST)
                        .told(FROST_HOURS)
                        .warns(
                                0,
                                -1,
                                "Gas came through a pipe below 0 °C for %s, the coldest %.1f °C: its water freezes there and can shut"
                                        + " the pipe. Lay it with a fall to a water trap, insulate or bury it."),
                state -> gas.madeNm3PerS() > 0,
                Margin.below(pipe, 0)::at);
        assembly.part(this);
    }

    private static int pipe(Condensate coolsTo, Surroundings surroundings, Network.Assembly assembly) {
        if (coolsTo instanceof Condensate.Fixed fixed) {
            return assembly.known("gas_pipe", fixed.celsius());
        }
        return coolsTo instanceof Condensate.Ground ? surroundings.ground() : surroundings.air();
    }

    @Override
    public void enter(Interval interval) {
        pressurePa = surroundings.weather().pressureHPa(interval.hour()) * PA_PER_HPA;
    }

    @Override
    public void ask(double timeS, State state) {
        double slurryC = state.nodeC(Network.SLURRY);
        double pipeKgPerNm3 = GasVapour.waterKgPerNm3(state.nodeC(pipe), pressurePa);
        double fallsKgPerNm3 = GasVapour.waterKgPerNm3(slurryC, pressurePa) - pipeKgPerNm3;
        if (fallsKgPerNm3 <= 0) {
            water.set(0);
            return;
        }
        double biogas = gas.madeNm3PerS() / methaneFraction;
        double biogasPerK = gas.madeNm3PerSPerK() / methaneFraction;
        double slope = GasVapour.waterSlopeKgPerNm3K(slurryC, pressurePa);
        water.set(biogas * fallsKgPerNm3, biogasPerK * fallsKgPerNm3 + biogas * slope);
    }
}
