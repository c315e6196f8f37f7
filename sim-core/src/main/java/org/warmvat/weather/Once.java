package org.warmvat.weather;

import java.util.function.Supplier;

/** A value computed when first asked for, by one thread only, and kept. */
final class Once<T> {
    private final Supplier<T> source;
    private volatile T value;

    Once(Supplier<T> source) {
        this.source = source;
    }

    T get() {
        T known = value;
        if (known == null) {
            synchronized (this) {
                known = value;
                if (known == null) {
                    known = source.get();
                    value = known;
                }
            }
        }
        return known;
    }
}
