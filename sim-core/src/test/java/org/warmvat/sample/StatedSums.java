package org.warmvat.sample;

import java.lang.reflect.Proxy;
import java.util.Map;
import org.warmvat.network.meter.Energy;
import org.warmvat.network.meter.Sums;

/** Sums that a test states. */
public final class StatedSums {

    private StatedSums() {}

    /** A period of 8760 h with some energies, kWh, and nothing else. */
    public static Sums of(Map<Energy, Double> kWh) {
        return (Sums) Proxy.newProxyInstance(
                Sums.class.getClassLoader(),
                new Class<?>[] {Sums.class},
                (proxy, method, arguments) -> switch (method.getName()) {
                    case "hours" -> 8760.0;
                    case "kWh" -> kWh.getOrDefault((Energy) arguments[0], 0.0);
                    default -> throw new UnsupportedOperationException(method.getName());
                });
    }
}
