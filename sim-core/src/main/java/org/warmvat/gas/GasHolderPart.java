package org.warmvat.gas;

import org.warmvat.design.gas.Gas;
import org.warmvat.design.gas.GasHolder;
import org.warmvat.network.Gate;
import org.warmvat.network.Margin;
import org.warmvat.network.Network;
import org.warmvat.network.Part;
import org.warmvat.network.Source;
import org.warmvat.network.State;
import org.warmvat.network.Stock;
import org.warmvat.network.Supply;
import org.warmvat.network.Switch;
import org.warmvat.network.meter.Balance;
import org.warmvat.network.meter.Line;
import org.warmvat.network.meter.Meter;
import org.warmvat.network.meter.Unit;
import org.warmvat.network.meter.Watched;

/**
 * The gas holder: what is made fills it, what burns gas empties it, what finds no room is surplus (equation 14.1). Full, empty, the
 * reserve and the restarts are located in time. It stands after the part that makes the gas.
 */
public final class GasHolderPart implements Part {

    /** Gas of the holder. */
    public static final Balance HOLDER = new Balance("gas_holder", "Gas holder", Unit.NM3);

    /** Dry biogas that came. */
    public static final Line MADE = new Line("gas_holder_nm3/made", "made", Unit.NM3);

    /** Dry biogas burnt by the uses. */
    public static final Line USES = new Line("gas_holder_nm3/uses", "uses", Unit.NM3);

    /** Dry biogas burnt by the backup heater. */
    public static final Line OWN_GAS = new Line("gas_holder_nm3/own_gas", "backup", Unit.NM3);

    /** Dry biogas burnt for hygienisation. */
    public static final Line HYGIENISATION = new Line("gas_holder_nm3/hygienisation", "hygienisation", Unit.NM3);

    /** Dry biogas that found no room. */
    public static final Line SURPLUS = new Line("gas_holder_nm3/surplus", "surplus", Unit.NM3);

    /** Dry biogas more in it than at the beginning. */
    public static final Line STORED = new Line("gas_holder_nm3/stored", "stored, holder", Unit.NM3);

    /** Hours in which it was full. */
    public static final Line FULL_HOURS = new Line("gas_holder_full_hours", "gas holder full", Unit.HOURS);

    /** Hours in which it was empty. */
    public static final Line EMPTY_HOURS = new Line("gas_holder_empty_hours", "gas holder empty", Unit.HOURS);

    /** Its stock, Nm3 of dry biogas. */
    public static final String STOCK = "gas_holder";

    /** A full holder's worth in the engines' measure of margins, which is kelvin: a fine step. */
    private static final double KELVIN_PER_FILLING = 10;

    private static final double HOUR_S = 3600;

    private final Gas gas;
    private final Stock stock;
    private final Source made;
    private final Switch empty;
    private final Switch held;
    private GasPart maker;

    /**
     * Adds a holder to a network.
     *
     * @param gas a gas side with a holder
     * @param reserveShare share kept for the tank's own heat
     * @param assembly the network being gathered
     */
    public GasHolderPart(Gas gas, double reserveShare, Network.Assembly assembly) {
        this.gas = gas;
        GasHolder holder = gas.holder().orElseThrow();
        double full = holder.fullNm3();
        double scale = KELVIN_PER_FILLING / full;
        stock = assembly.stock(STOCK, holder.startsFullShare() * full);
        int madeMeter = assembly.meter(Meter.of("gas_holder_made").told(MADE).entering(HOLDER, 1));
        made = assembly.source(Network.NOWHERE, madeMeter);
        stock.fedBy(madeMeter, 1);
        int surplus = assembly.meter(Meter.of("gas_surplus")
                .told(SURPLUS)
                .hourly(HOUR_S, "gas_surplus_nm3_h")
                .leaving(HOLDER, -1));
        Switch brim = assembly.bounded(stock, full, scale, surplus);
        empty = between(assembly, "gas_holder_empty", 0, holder.restartShare() * full, scale);
        held = between(
                assembly, "gas_uses_held", reserveShare * full, (reserveShare + holder.restartShare()) * full, scale);
        watch(assembly, "gas_holder_full", FULL_HOURS, brim);
        watch(assembly, "gas_holder_empty", EMPTY_HOURS, empty);
        assembly.declare().storeOf(stock.number(), 1, STORED, HOLDER);
        assembly.declare().hourlyStock(stock.number(), "gas_holder_nm3");
        // stands in the results of every holder, whatever burns its gas
        assembly.meter(Meter.of("gas_holder_unburnt").told(USES).told(OWN_GAS).told(HYGIENISATION));
    }

    /** On from one content downwards until another is reached again. */
    private Switch between(Network.Assembly assembly, String name, double from, double until, double scale) {
        return assembly.switchOf(name)
                .startsWhen(Gate.OPEN, Margin.ofStock(stock, from, -scale))
                .stopsWhen(Gate.OPEN, Margin.ofStock(stock, until, scale));
    }

    private static void watch(Network.Assembly assembly, String name, Line hours, Switch one) {
        assembly.watch(Watched.of(name).told(hours), state -> state.isOn(one.number()), state -> 1);
    }

    /** Is filled by what makes the gas. */
    public void filledBy(GasPart gasPart, Network.Assembly assembly) {
        maker = gasPart;
        assembly.part(this);
    }

    @Override
    public void ask(double timeS, State state) {
        double fraction = gas.methaneFraction();
        made.set(maker.madeNm3PerS() / fraction, maker.madeNm3PerSPerK() / fraction);
    }

    /**
     * What a heater of the tank itself burns from it, which the uses may not touch.
     *
     * @param told the line of the gas so burnt
     */
    public Supply forOwnHeat(Line told) {
        return new Supply() {
            @Override
            public boolean isLimited() {
                return true;
            }

            @Override
            public Gate isThere() {
                return state -> !state.isOn(empty.number());
            }

            @Override
            public int meter(Network.Assembly assembly, Meter meter, double energyJ) {
                return drawn(assembly, meter, energyJ, told);
            }
        };
    }

    /** The meter of what a use burns from it, J of gas. */
    int drawnByUse(Network.Assembly assembly, Meter meter) {
        return drawn(assembly, meter, 1, USES);
    }

    private int drawn(Network.Assembly assembly, Meter meter, double energyJ, Line told) {
        double nm3 = energyJ / (GasEnergy.METHANE_J_PER_NM3 * gas.methaneFraction());
        int index = assembly.meter(meter.told(nm3, told).leaving(HOLDER, -nm3));
        stock.fedBy(index, -nm3);
        return index;
    }

    /** Open while the uses find gas. */
    Gate serves() {
        return state -> !state.isOn(held.number());
    }
}
