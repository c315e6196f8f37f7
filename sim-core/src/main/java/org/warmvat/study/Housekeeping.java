package org.warmvat.study;

import org.warmvat.design.CardinalTemperatures;
import org.warmvat.design.Design;
import org.warmvat.design.Gas;
import org.warmvat.network.Flows;
import org.warmvat.network.Network;
import org.warmvat.network.Part;
import org.warmvat.network.State;

/** What a run keeps account of besides the parts: the slurry's mean temperature and its limits, the controls' electricity. */
final class Housekeeping implements Part {

    /** Meter of the slurry's temperature, K s above 0 °C. */
    static final String SLURRY_TEMPERATURE = "slurry_temperature";

    /** Meter of the shortfall below the floor temperature, K s. */
    static final String SHORTFALL = "shortfall";

    /** Meter of the controls' electricity, J. */
    static final String ELECTRONICS_ELECTRICITY = "electronics_electricity";

    /** Watch: slurry below the floor temperature. */
    static final String BELOW_FLOOR = "below_floor";

    /** Watch: slurry colder than the feedstocks' least temperature. */
    static final String TOO_COLD = "too_cold_to_digest";

    /** Watch: slurry hotter than the feedstocks' most temperature. */
    static final String TOO_HOT = "too_hot_to_digest";

    /** Watch: slurry below 0 °C, where the model is no longer valid. */
    static final String FREEZING = "freezing";

    private final int slurry;
    private final double floorC;
    private final double electronicsW;
    private final int temperatureMeter;
    private final int shortfallMeter;
    private final int electronicsMeter;

    Housekeeping(Design design, Network.Assembly assembly, int slurry) {
        this.slurry = slurry;
        floorC = design.control().floorC();
        electronicsW = design.control().electronicsW();
        temperatureMeter = assembly.meter(SLURRY_TEMPERATURE);
        shortfallMeter = assembly.meter(SHORTFALL);
        electronicsMeter = assembly.meter(ELECTRONICS_ELECTRICITY);
        assembly.watch(BELOW_FLOOR, (timeS, state) -> floorC - state.nodeC(slurry));
        assembly.watch(FREEZING, (timeS, state) -> -state.nodeC(slurry));
        if (design.gas().isPresent()) {
            CardinalTemperatures limits = design.gas().map(Gas::temperatures).orElseThrow();
            assembly.watch(TOO_COLD, (timeS, state) -> limits.leastC() - state.nodeC(slurry));
            assembly.watch(TOO_HOT, (timeS, state) -> state.nodeC(slurry) - limits.mostC());
        }
    }

    @Override
    public void contribute(double timeS, State state, Flows flows) {
        double slurryC = state.nodeC(slurry);
        flows.meter(temperatureMeter, slurryC);
        flows.meter(shortfallMeter, Math.max(0, floorC - slurryC));
        flows.meter(electronicsMeter, electronicsW);
    }
}
