package org.warmvat.cli.answer.backup;

import java.util.List;
import org.warmvat.cli.words.Words;
import org.warmvat.question.backup.BackupResult;

/** Whether the backup coil is large enough. */
final class CoilWords {

    private CoilWords() {}

    static List<String> of(BackupResult result) {
        BackupResult.Coil coil = result.coil();
        if (coil.passesW().isEmpty()) {
            return List.of("The heater is an element in the slurry: there is no coil to limit it."
                    + (coil.isLimit() ? " What limits it are the hours in which it may heat." : ""));
        }
        return List.of(
                "At the set-point and its flow limit the coil passes " + BackupWords.watts(coil.passesW()) + ".",
                limit(result, coil));
    }

    private static String limit(BackupResult result, BackupResult.Coil coil) {
        if (!coil.isLimit()) {
            return result.need().chosenW().getAsDouble() > coil.passesW().getAsDouble()
                    ? "That is less than the chosen heater gives: near the set-point the heater idles part of the"
                            + " time, and a larger one would help little."
                    : "That is more than the chosen heater gives: the coil is no limit.";
        }
        String has = Words.square(coil.areaM2().getAsDouble());
        return coil.neededM2().isPresent()
                ? "Coil and flow temperature, not the heater, are the limit: the coil needs "
                        + Words.square(coil.neededM2().getAsDouble()) + " where it has " + has + "."
                : "Coil, flow temperature or the hours in which the heater may run are the limit, and a coil of up"
                        + " to twenty times its " + has + " is not enough.";
    }
}
