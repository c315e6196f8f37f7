package org.warmvat.cli.option;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Optional;
import org.warmvat.engine.Engine;
import org.warmvat.engine.HourRecord;
import org.warmvat.engine.HourSink;
import org.warmvat.question.Kept;
import org.warmvat.question.Parallel;
import picocli.CommandLine.Option;

/** Options of all commands that run tanks. */
public final class RunOptions extends AnswerOptions {

    private static final int MOST_THREADS = 256;
    private static final int PROGRESS_WIDTH = 60;
    private static final int HOURS_BETWEEN = 500;

    @Option(
            names = "--engine",
            paramLabel = "NAME",
            defaultValue = "fast",
            description = "Which engine integrates: fast or reference (${DEFAULT-VALUE}).")
    private EngineChoice engine;

    @Option(
            names = "--threads",
            paramLabel = "N",
            description = "On how many threads to run (one for each processor); the results are the same.")
    private Optional<Integer> threads = Optional.empty();

    private Optional<Parallel.Progress> elsewhere = Optional.empty();

    /**
     * Tanks at work.
     *
     * @param <T> what comes of it
     */
    public interface Work<T> {
        /** Does the work, given the threads it may use. */
        T on(Parallel parallel) throws Exception;
    }

    /** The engine that was chosen. */
    public Engine engine() {
        return engine.engine();
    }

    /** Results always go to a folder. */
    @Override
    public Optional<Path> place() {
        return super.place().or(() -> Optional.of(Path.of("warmvat-" + spec().name())));
    }

    /** Has progress told elsewhere than on a terminal. */
    public void tellProgress(Parallel.Progress told) {
        elsewhere = Optional.of(told);
    }

    /** Works on as many threads as asked for, with progress on a terminal. */
    public <T> T parallel(String what, Work<T> work) throws Exception {
        return parallel(what, Kept.NOTHING, work);
    }

    /** The same with runs that are kept. */
    public <T> T parallel(String what, Kept kept, Work<T> work) throws Exception {
        int count = threads.orElse(Runtime.getRuntime().availableProcessors());
        within("--threads", count, 1, MOST_THREADS);
        try (Parallel parallel = new Parallel(count, elsewhere.orElseGet(() -> shown(what)), kept)) {
            return work.on(parallel);
        }
    }

    /** Tells on a terminal how many of the hours of a run are done. */
    public HourSink hours(int hours) {
        Parallel.Progress told = shown("hours");
        return new HourSink() {
            private int done;

            @Override
            public boolean accept(HourRecord hour) {
                done++;
                if (done == hours || done % HOURS_BETWEEN == 0) {
                    told.reached(done, hours);
                }
                return true;
            }
        };
    }

    /** Tells on a terminal, in place, how far the work is; elsewhere it keeps silent. */
    private Parallel.Progress shown(String what) {
        if (quiet() || !onTerminal()) {
            return Parallel.Progress.SILENT;
        }
        PrintWriter err = spec().commandLine().getErr();
        long begun = System.nanoTime();
        return (done, all) -> {
            double leftS = (System.nanoTime() - begun) * 1e-9 / done * (all - done);
            String told = done + " of " + all + " " + what + ", " + left(leftS) + " left";
            err.print("\r" + told + " ".repeat(Math.max(0, PROGRESS_WIDTH - told.length())));
            err.print(done == all ? "\r" + " ".repeat(PROGRESS_WIDTH) + "\r" : "");
            err.flush();
        };
    }

    /** A time to wait in words. */
    public static String left(double seconds) {
        return seconds < 90
                ? "about " + (int) Math.ceil(seconds) + " s"
                : seconds < 5400
                        ? "about " + Math.round(seconds / 60) + " min"
                        : "about " + Math.round(seconds / 3600) + " h";
    }

    @SuppressWarnings(
            "SystemConsoleNull") // later Java always has a console, and then progress shows in logs, which is harmless
    private static boolean onTerminal() {
        return System.console() != null;
    }
}
