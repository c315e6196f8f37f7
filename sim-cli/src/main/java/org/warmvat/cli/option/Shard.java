package org.warmvat.cli.option;

import java.util.Optional;

/**
 * A part of many runs, of consecutive ones.
 *
 * @param number which part, counted from 1
 * @param of how many parts there are
 */
public record Shard(int number, int of) {

    /**
     * Reads {@code i/n}; nothing given is the whole.
     *
     * @throws IllegalArgumentException when it is no part
     */
    static Shard parse(Optional<String> text) {
        if (text.isEmpty()) {
            return new Shard(1, 1);
        }
        String[] numbers = text.get().split("/", -1);
        if (text.get().matches("[0-9]{1,6}/[0-9]{1,6}")) {
            Shard shard = new Shard(Integer.parseInt(numbers[0]), Integer.parseInt(numbers[1]));
            if (shard.number >= 1 && shard.number <= shard.of) {
                return shard;
            }
        }
        throw new IllegalArgumentException("--shard " + text.get() + ", expected a part such as 2/8");
    }

    /** The first run of this part. */
    public int from(int runs) {
        return (int) ((long) runs * (number - 1) / of);
    }

    /** The run after the last of this part. */
    public int to(int runs) {
        return (int) ((long) runs * number / of);
    }
}
