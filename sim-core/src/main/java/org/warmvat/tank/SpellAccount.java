package org.warmvat.tank;

import java.util.function.IntPredicate;
import org.warmvat.design.Design;
import org.warmvat.design.heating.BackupCircuit;
import org.warmvat.design.season.SeasonTable;
import org.warmvat.design.season.Spell;
import org.warmvat.gas.GasEnergy;
import org.warmvat.gas.GasPart;
import org.warmvat.heating.BackupPart;
import org.warmvat.network.Network;
import org.warmvat.network.Surroundings;
import org.warmvat.network.meter.Declarations;
import org.warmvat.network.meter.Line;
import org.warmvat.network.meter.Unit;

/** Gas and bought heat by spell of the calendar: sums over the hours whose date lies in it (equation 12.5). */
final class SpellAccount {

    private static final double HOURS_PER_DAY = 24;
    private static final double HOUR_S = 3600;

    private final Design design;
    private final Surroundings surroundings;
    private final Network.Assembly assembly;
    private int lastHour = -1;
    private int lastDay;

    private SpellAccount(Design design, Surroundings surroundings, Network.Assembly assembly) {
        this.design = design;
        this.surroundings = surroundings;
        this.assembly = assembly;
    }

    /** Declares the lines of every spell, and of the days in none. */
    static void declare(Design design, Surroundings surroundings, Network.Assembly assembly) {
        if (design.calendar().isNone()) {
            return;
        }
        SpellAccount account = new SpellAccount(design, surroundings, assembly);
        for (Spell spell : design.calendar().spells()) {
            account.declare(spell.name(), hour -> spell.dayOf(account.day(hour)) > 0);
        }
        account.declare(
                Spell.OUTSIDE,
                hour -> design.calendar().spells().stream().noneMatch(spell -> spell.dayOf(account.day(hour)) > 0));
    }

    /** Day of the year of an hour; asked for the same hour many times. */
    private int day(int hour) {
        if (hour != lastHour) {
            lastHour = hour;
            lastDay = SeasonTable.dayOf(surroundings.date(hour * HOUR_S));
        }
        return lastDay;
    }

    private void declare(String spell, IntPredicate hours) {
        Declarations all = assembly.declare();
        all.during(line(spell, "days", "days", Unit.TIMES), hours, hour -> 1 / HOURS_PER_DAY);
        int methane = assembly.meter(GasPart.METHANE);
        all.during(line(spell, "methane_nm3", "methane", Unit.NM3), hours, hour -> hour.meter(methane));
        Line energy = line(spell, "gas_energy_kwh", "gas energy", Unit.KWH);
        all.during(energy, hours, hour -> Unit.KWH.of(GasEnergy.METHANE_J_PER_NM3 * hour.meter(methane)));
        int power = assembly.meter(BackupPart.BACKUP_POWER);
        double efficiency = design.backup().map(BackupCircuit::efficiency).orElse(1.0);
        Line bought = line(spell, "backup_bought_kwh", "bought for the backup", Unit.KWH);
        all.during(bought, hours, hour -> Unit.KWH.of(hour.meter(power) / efficiency));
    }

    private static Line line(String spell, String key, String name, Unit unit) {
        return new Line("spells/" + spell + "/" + key, spell + ", " + name, unit);
    }
}
