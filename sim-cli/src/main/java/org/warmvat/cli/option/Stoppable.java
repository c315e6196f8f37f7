package org.warmvat.cli.option;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.function.IntSupplier;

/**
 * A command that ends cleanly when the process is told to stop, by Ctrl-C or by a scheduler: its thread is interrupted, it clears
 * away what it has begun, says so in a line, and the process ends with {@link ExitCode#RUN_NOT_COMPLETED}.
 */
public final class Stoppable {

    private static final long PATIENCE_S = 20;

    private final CountDownLatch ended = new CountDownLatch(1);
    private final Thread thread = Thread.currentThread();
    private volatile int code = ExitCode.RUN_NOT_COMPLETED.number();

    private Stoppable() {}

    /** Runs a command on the calling thread; its exit code. */
    public static int run(IntSupplier command) {
        Stoppable stoppable = new Stoppable();
        Runtime.getRuntime().addShutdownHook(new Thread(stoppable::stop, "stop"));
        try {
            stoppable.code = command.getAsInt();
            return stoppable.code;
        } finally {
            stoppable.ended.countDown();
        }
    }

    /** Runs when the process ends, of itself or because it was told to; the latter only finds the command unfinished. */
    private void stop() {
        if (ended.getCount() == 0) {
            return;
        }
        thread.interrupt();
        try {
            if (!ended.await(PATIENCE_S, TimeUnit.SECONDS)) {
                System.err.println("The run could not be completed: stopped");
            }
        } catch (InterruptedException impatient) {
            Thread.currentThread().interrupt();
        }
        Runtime.getRuntime().halt(code);
    }
}
