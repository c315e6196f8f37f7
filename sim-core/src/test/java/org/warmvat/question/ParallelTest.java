package org.warmvat.question;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicReference;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class ParallelTest {

    @Test
    void handsResultsOverInOrder() {
        List<Integer> tasks = IntStream.range(0, 200).boxed().toList();
        List<Integer> told = new ArrayList<>();
        try (Parallel parallel = new Parallel(3, (done, all) -> told.add(done))) {
            List<Integer> results = parallel.map(tasks, task -> task * task);
            assertEquals(tasks.stream().map(task -> task * task).toList(), results);
        }
        assertEquals(IntStream.rangeClosed(1, 200).boxed().toList(), told);
    }

    @Test
    void passesOnTheFirstFailureInOrder() {
        try (Parallel parallel = new Parallel(2, Parallel.Progress.SILENT)) {
            IllegalStateException failure = assertThrows(
                    IllegalStateException.class,
                    () -> parallel.map(List.of(1, 2, 3, 4), task -> {
                        if (task > 1) {
                            throw new IllegalStateException("task " + task);
                        }
                        return task;
                    }));
            assertEquals("task 2", failure.getMessage());
        }
    }

    @Test
    void stopsItsTasksWhenInterrupted() throws InterruptedException {
        CountDownLatch begun = new CountDownLatch(1);
        CountDownLatch stopped = new CountDownLatch(1);
        AtomicReference<Throwable> end = new AtomicReference<>();
        Thread caller = new Thread(() -> {
            try (Parallel parallel = new Parallel(1, Parallel.Progress.SILENT)) {
                parallel.map(List.of(1), task -> sleep(begun, stopped));
            } catch (CancellationException cancelled) {
                end.set(cancelled);
            }
        });
        caller.start();
        begun.await();
        caller.interrupt();
        caller.join();
        stopped.await();
        assertTrue(end.get() instanceof CancellationException);
    }

    private static Integer sleep(CountDownLatch begun, CountDownLatch stopped) {
        begun.countDown();
        try {
            Thread.sleep(60_000);
        } catch (InterruptedException expected) {
            stopped.countDown();
        }
        return 0;
    }
}
