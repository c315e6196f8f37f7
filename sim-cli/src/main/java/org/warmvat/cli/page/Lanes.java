package org.warmvat.cli.page;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.concurrent.CancellationException;

/** Runs of the year, one at a time for each open page: a newer one stops the older, and one that was overtaken never starts. */
final class Lanes {

    private static final int MOST_PAGES = 8;

    private final Map<String, Lane> lanes = new LinkedHashMap<>(16, 0.75F, true) {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<String, Lane> eldest) {
            return size() > MOST_PAGES;
        }
    };

    private static final class Lane {
        private long newest = Long.MIN_VALUE;
        private Thread running;
    }

    /**
     * Works, unless something newer comes.
     *
     * @param page which page asks
     * @param number counts up with the page's requests
     * @throws CancellationException when something newer came
     */
    <T> T newest(String page, long number, Callable<T> work) throws Exception {
        Lane lane;
        synchronized (lanes) {
            lane = lanes.computeIfAbsent(page, unused -> new Lane());
        }
        enter(lane, number);
        try {
            return work.call();
        } finally {
            leave(lane);
        }
    }

    private static void enter(Lane lane, long number) throws InterruptedException {
        synchronized (lane) {
            lane.newest = Math.max(lane.newest, number);
            if (lane.running != null) {
                lane.running.interrupt();
            }
            while (lane.running != null && lane.newest == number) {
                lane.wait();
            }
            if (lane.newest != number) {
                throw new CancellationException("overtaken");
            }
            lane.running = Thread.currentThread();
        }
    }

    private static void leave(Lane lane) {
        synchronized (lane) {
            lane.running = null;
            // an interruption that came too late is not the next request's
            Thread.interrupted();
            lane.notifyAll();
        }
    }
}
