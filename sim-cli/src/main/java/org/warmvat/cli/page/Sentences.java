package org.warmvat.cli.page;

import java.util.List;
import org.warmvat.account.LedgerOpen;
import org.warmvat.cli.file.InputRefused;
import org.warmvat.design.keys.Refused;
import org.warmvat.engine.EngineFailure;
import org.warmvat.tank.StudyRefused;
import org.warmvat.weather.WeatherRefused;

/** What went wrong in the program's own sentences. */
final class Sentences {

    private Sentences() {}

    static List<String> of(Throwable failure) {
        if (failure instanceof InputRefused refused) {
            return refused.faults();
        }
        if (failure instanceof Refused refused) {
            return refused.faults().stream().map(Refused.Fault::toString).toList();
        }
        if (failure instanceof StudyRefused refused) {
            return refused.faults();
        }
        if (failure instanceof WeatherRefused refused) {
            return refused.faults();
        }
        if (failure instanceof Questions.NotAnswered notAnswered) {
            return notAnswered.sentences();
        }
        if (failure instanceof EngineFailure || failure instanceof LedgerOpen) {
            return List.of("The run could not be completed: " + failure.getMessage());
        }
        return List.of("warmvat broke down, which is a fault of the program: " + failure);
    }

    /** Whether what was asked is wrong, and not the program. */
    static boolean isRefusal(Throwable failure) {
        return failure instanceof InputRefused
                || failure instanceof Refused
                || failure instanceof StudyRefused
                || failure instanceof WeatherRefused
                || failure instanceof Questions.NotAnswered
                || failure instanceof EngineFailure
                || failure instanceof LedgerOpen;
    }
}
