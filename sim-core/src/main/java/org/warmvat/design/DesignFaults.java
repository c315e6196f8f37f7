package org.warmvat.design;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.warmvat.design.feeding.Feed;
import org.warmvat.design.gas.Gas;
import org.warmvat.design.heating.BackupCircuit;
import org.warmvat.design.heating.BackupSource;
import org.warmvat.design.heating.Control;
import org.warmvat.design.heating.HighLimit;
import org.warmvat.design.heating.SolarCircuit;
import org.warmvat.design.keys.Refused;
import org.warmvat.design.keys.Shown;
import org.warmvat.design.season.Spell;
import org.warmvat.design.surroundings.Shelter;
import org.warmvat.design.tank.Tank;

/** What may not be in a design as a whole, though each of its parts is allowed. */
final class DesignFaults {

    private DesignFaults() {}

    static List<Refused.Fault> of(
            Tank tank,
            Feed feed,
            Optional<SolarCircuit> solar,
            Optional<BackupCircuit> backup,
            Control control,
            Optional<Gas> gas,
            Optional<Shelter> shelter,
            List<Spell> spells) {
        List<Refused.Fault> faults = new ArrayList<>();
        shelterFault(tank, shelter).ifPresent(faults::add);
        feedstockFaults(spells, feed, faults);
        if (!tank.place().isIndoors() && !tank.place().isSheltered()) {
            feed.roomKeys()
                    .forEach(key -> faults.add(new Refused.Fault(
                            "feed." + key,
                            "room, but the tank is not in a room, expected place: indoors with room_c, or air, ground or {fixed_c: number}",
                            List.of("tank"))));
        }
        if (gas.isEmpty()
                && backup.filter(b -> b.source() == BackupSource.OWN_GAS).isPresent()) {
            faults.add(new Refused.Fault(
                    "backup.source",
                    "own_gas, but no gas is computed, expected a gas block, or electric or fuel",
                    List.of("gas")));
        }
        solar.flatMap(s -> limitFault(s.pumpControl().highLimit(), control.setpointC()))
                .ifPresent(faults::add);
        return faults;
    }

    private static Optional<Refused.Fault> shelterFault(Tank tank, Optional<Shelter> shelter) {
        boolean sheltered = tank.place().isSheltered();
        if (sheltered == shelter.isPresent()) {
            return Optional.empty();
        }
        String text = sheltered
                ? "is missing, expected a block (needed for place: shelter)"
                : "has no place here: give tank.place: shelter";
        return Optional.of(new Refused.Fault("shelter", text, List.of("tank")));
    }

    private static void feedstockFaults(List<Spell> spells, Feed feed, List<Refused.Fault> faults) {
        for (int i = 0; i < spells.size(); i++) {
            for (String name : spells.get(i).feed().feedstocks().keySet()) {
                if (!feed.names().contains(name)) {
                    faults.add(new Refused.Fault(
                            "calendar[" + i + "].feedstocks." + name,
                            "is none of the feedstocks, expected " + String.join(", ", feed.names()),
                            List.of("feed")));
                }
            }
        }
    }

    private static Optional<Refused.Fault> limitFault(HighLimit limit, double setpointC) {
        List<String> control = List.of("control");
        if (limit instanceof HighLimit.At at && at.celsius() < setpointC) {
            String text = Shown.number(at.celsius()) + ", expected control.setpoint_c, " + Shown.number(setpointC)
                    + " C, or above";
            return Optional.of(new Refused.Fault("solar.tank_high_limit_c", text, control));
        }
        if (limit instanceof HighLimit.AboveSetpoint above && setpointC + above.kelvin() > 100) {
            String text = Shown.number(above.kelvin()) + ", expected set-point and this together up to 100 C";
            return Optional.of(new Refused.Fault("solar.limit_above_setpoint_k", text, control));
        }
        return Optional.empty();
    }
}
