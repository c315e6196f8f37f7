package org.warmvat.cli.page;

import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;

/** Stops the server some seconds after the page was closed, if it is to and none is open then, as there is when it is loaded again. */
final class Closing {

    private static final long GRACE_S = 4;

    private final ScheduledExecutorService clock = Executors.newSingleThreadScheduledExecutor(task -> {
        Thread thread = new Thread(task, "page closing");
        thread.setDaemon(true);
        return thread;
    });
    private final AtomicInteger open = new AtomicInteger();
    private final Runnable stop;
    private volatile boolean untilClosed;

    Closing(boolean untilClosed, Runnable stop) {
        this.untilClosed = untilClosed;
        this.stop = stop;
    }

    Reply set(boolean stopWhenClosed) {
        untilClosed = stopWhenClosed;
        return Reply.empty(200);
    }

    /** A request of the page came in: it opens with its start and closes with a word of farewell. */
    void seen(String path) {
        if (path.equals("start")) {
            open.incrementAndGet();
        } else if (path.equals("closed")) {
            open.decrementAndGet();
            Future<?> unused = clock.schedule(this::stopUnlessOpen, GRACE_S, TimeUnit.SECONDS);
        }
    }

    private void stopUnlessOpen() {
        if (untilClosed && open.get() <= 0) {
            stop.run();
        }
    }

    void end() {
        clock.shutdown();
    }
}
