package org.warmvat.cli.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.concurrent.CancellationException;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import org.junit.jupiter.api.Test;

/** The newest request of a page wins. */
class LanesTest {

    private final Lanes lanes = new Lanes();

    private static FutureTask<String> started(FutureTask<String> task) {
        Thread thread = new Thread(task);
        thread.setDaemon(true);
        thread.start();
        return task;
    }

    @Test
    void aNewerRequestStopsTheOlderOne() throws Exception {
        CountDownLatch running = new CountDownLatch(1);
        FutureTask<String> older = started(new FutureTask<>(() -> lanes.newest("a", 1, () -> {
            running.countDown();
            new CountDownLatch(1).await();
            return "older";
        })));
        running.await();
        assertEquals("other", lanes.newest("b", 1, () -> "other"));
        assertEquals("newer", lanes.newest("a", 2, () -> "newer"));
        assertEquals(
                InterruptedException.class,
                assertThrows(ExecutionException.class, older::get).getCause().getClass());
    }

    @Test
    void anOvertakenRequestNeverStarts() throws Exception {
        assertEquals("newest", lanes.newest("a", 3, () -> "newest"));
        assertThrows(CancellationException.class, () -> lanes.newest("a", 2, () -> "late"));
    }

    @Test
    void anInterruptionThatCameTooLateIsNotTheNextOnes() throws Exception {
        lanes.newest("a", 1, () -> {
            Thread.currentThread().interrupt();
            return "";
        });
        assertEquals(false, Thread.currentThread().isInterrupted());
    }
}
