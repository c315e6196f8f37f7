package org.warmvat.cli.answer;

import java.util.OptionalDouble;
import java.util.function.Function;
import org.warmvat.result.Marks;
import org.warmvat.result.Period;

/**
 * A figure of a period under its name in {@code summary.json} and the CSV tables.
 *
 * @param group key of the object that holds it, empty for a figure that stands alone
 * @param key its key there
 * @param circuit the circuit without which it means nothing
 * @param value its value, empty for a share of nothing
 */
record Figure(String group, String key, Needs circuit, Function<Period, OptionalDouble> value) {

    /** What a design must have for a figure to mean something. */
    enum Needs {
        NOTHING,
        SOLAR,
        BACKUP,
        GAS;

        boolean met(Marks marks) {
            return switch (this) {
                case NOTHING -> true;
                case SOLAR -> marks.hasSolar();
                case BACKUP -> marks.hasBackup();
                case GAS -> marks.hasGas();
            };
        }
    }

    /** Name of its column: a group's unit goes to the end, {@code stored_kwh.slurry} becoming {@code stored_slurry_kwh}. */
    String column() {
        if (group.isEmpty()) {
            return key;
        }
        int unit = group.lastIndexOf('_');
        return unit < 0 ? group + "_" + key : group.substring(0, unit) + "_" + key + group.substring(unit);
    }
}
