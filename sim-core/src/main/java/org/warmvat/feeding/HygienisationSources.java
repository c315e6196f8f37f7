package org.warmvat.feeding;

import org.warmvat.design.feeding.Hygienisation;
import org.warmvat.design.heating.BackupSource;
import org.warmvat.network.Gate;
import org.warmvat.network.Network;
import org.warmvat.network.Source;
import org.warmvat.network.Supply;
import org.warmvat.network.meter.Energy;
import org.warmvat.network.meter.Line;
import org.warmvat.network.meter.Meter;
import org.warmvat.network.meter.Unit;

/** Heat of hygienisation as it is counted: supplied, recovered, lost, bought, and of own gas what a holder lacked (equation 15.1). */
final class HygienisationSources {

    private final Hygienisation hygienisation;
    private final Source heat;
    private final Source recovered;
    private final Source loss;
    private final Source bought;
    private final Source burnt;
    private final Source lacking;

    HygienisationSources(Hygienisation hygienisation, Supply supply, Network.Assembly assembly) {
        this.hygienisation = hygienisation;
        heat = source(assembly, Meter.of("hygienisation_heat").told(line("heat", "heat of hygienisation")));
        recovered = source(assembly, Meter.of("hygienisation_recovered").told(line("recovered", "recovered")));
        loss = source(assembly, Meter.of("hygienisation_loss").told(line("loss", "lost by its vessel")));
        bought = source(
                assembly,
                Meter.of("hygienisation_bought")
                        .told(FeedPart.HYGIENISATION_BOUGHT)
                        .hourly("hygienisation_bought_w")
                        .counted(side(hygienisation.source()), 1));
        Gate there = supply.isThere();
        if (supply.isLimited()) {
            burnt = assembly.source(Network.NOWHERE, supply.meter(assembly, Meter.of("hygienisation_burnt"), 1), there);
            lacking = assembly.source(
                    Network.NOWHERE,
                    assembly.meter(Meter.of("hygienisation_short_of_own_gas").told(FeedPart.HYGIENISATION_SHORT)),
                    state -> !there.isOpen(state));
        } else {
            burnt = bought;
            lacking = bought;
        }
    }

    private static Source source(Network.Assembly assembly, Meter meter) {
        return assembly.source(Network.NOWHERE, assembly.meter(meter));
    }

    private static Line line(String key, String name) {
        return new Line("hygienisation_kwh/" + key, name, Unit.KWH);
    }

    private static Energy side(BackupSource source) {
        return switch (source) {
            case ELECTRIC -> Energy.HEATING_ELECTRICITY;
            case FUEL -> Energy.FUEL;
            case OWN_GAS -> Energy.OWN_GAS;
        };
    }

    void set(BatchHeat batch, double feedC, double kgPerS, double lossW) {
        state(kgPerS * batch.heatJPerKg(feedC) + lossW, kgPerS * batch.recoveredJPerKg(feedC), lossW);
    }

    void rest() {
        state(0, 0, 0);
    }

    private void state(double heatW, double recoveredW, double lossW) {
        heat.set(heatW);
        recovered.set(recoveredW);
        loss.set(lossW);
        double boughtW = heatW / hygienisation.efficiency();
        bought.set(boughtW);
        burnt.set(boughtW);
        lacking.set(boughtW);
    }
}
