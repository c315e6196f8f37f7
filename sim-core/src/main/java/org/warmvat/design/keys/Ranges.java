package org.warmvat.design.keys;

import java.util.List;

/** Checks of records at birth: each number by its key, and what several numbers together make wrong. */
public final class Ranges {

    private Ranges() {}

    /**
     * Refuses numbers out of their keys' ranges, blank texts and lists with too few entries.
     *
     * @param type kind of record
     * @param values its components in their order
     */
    public static void check(Class<?> type, Object... values) {
        Block.of(type).check(values);
    }

    /**
     * Refuses what several keys together make wrong.
     *
     * @param holds whether it is right
     * @param key key that is blamed
     * @param text what was found and what was expected
     * @param restsOn other blocks of the file the judgement rests on
     */
    public static void stated(boolean holds, String key, String text, String... restsOn) {
        if (!holds) {
            throw new Refused(List.of(new Refused.Fault(key, text, List.of(restsOn))));
        }
    }
}
