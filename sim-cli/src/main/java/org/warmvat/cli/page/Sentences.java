package org.warmvat.cli.page;

import java.util.List;
import java.util.Optional;
import org.warmvat.account.LedgerOpen;
import org.warmvat.cli.option.Failures;
import org.warmvat.engine.EngineFailure;

/** What went wrong in the program's own sentences. */
final class Sentences {

    private Sentences() {}

    static List<String> of(Throwable failure) {
        return refusal(failure).orElse(List.of("warmvat broke down, which is a fault of the program: " + failure));
    }

    /** What is wrong with what was asked; empty where the program is wrong. */
    static Optional<List<String>> refusal(Throwable failure) {
        if (failure instanceof Questions.NotAnswered notAnswered) {
            return Optional.of(notAnswered.sentences());
        }
        return failure instanceof EngineFailure || failure instanceof LedgerOpen
                ? Optional.of(List.of("The run could not be completed: " + failure.getMessage()))
                : Failures.refused(failure);
    }
}
