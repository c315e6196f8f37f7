package org.warmvat.cli.page;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.CancellationException;
import java.util.concurrent.TimeUnit;
import org.warmvat.cli.answer.Document;

/** A question that is being answered on a thread of its own, how far it is, and in the end its answer. */
final class Inquiry {

    private final int number;
    private final Thread thread;
    private int done;
    private int all;
    private Optional<Document> document = Optional.empty();
    private List<String> sentences = List.of();
    private boolean ended;

    /** Where a question stands. */
    record State(int done, int all, boolean ended, List<String> sentences) {}

    /** Answers, and is told of the inquiry that it answers. */
    interface Work {
        /** The answer. */
        Document answer(Inquiry inquiry) throws Exception;
    }

    Inquiry(int number, Work work) {
        this.number = number;
        thread = new Thread(() -> run(() -> work.answer(this)), "question " + number);
        thread.setDaemon(true);
    }

    Inquiry begun() {
        thread.start();
        return this;
    }

    int number() {
        return number;
    }

    private void run(Callable<Document> work) {
        Optional<Document> found = Optional.empty();
        List<String> said = List.of();
        try {
            found = Optional.of(work.call());
        } catch (Exception | StackOverflowError | OutOfMemoryError failure) {
            said = isStopped(failure) ? List.of("Stopped.") : Sentences.of(failure);
        }
        synchronized (this) {
            document = found;
            sentences = said;
            ended = true;
            notifyAll();
        }
    }

    private static boolean isStopped(Throwable failure) {
        return failure instanceof CancellationException || failure instanceof InterruptedException;
    }

    synchronized void reached(int tasks, int ofAll) {
        done = tasks;
        all = ofAll;
        notifyAll();
    }

    void stop() {
        thread.interrupt();
    }

    synchronized boolean hasEnded() {
        return ended;
    }

    /** The answer, once there is one. */
    synchronized Optional<Document> document() {
        return document;
    }

    /** Waits until it stands elsewhere than before, or for a while. */
    synchronized State after(State before, long waitMs) throws InterruptedException {
        long until = System.nanoTime() + TimeUnit.MILLISECONDS.toNanos(waitMs);
        long left = waitMs;
        while (state().equals(before) && left > 0) {
            wait(left);
            left = TimeUnit.NANOSECONDS.toMillis(until - System.nanoTime());
        }
        return state();
    }

    private State state() {
        return new State(done, all, ended, sentences);
    }
}
