package org.warmvat.network;

/**
 * Something the user must know, with how often and how bad.
 *
 * @param key short stable name, such as {@code below_floor}
 * @param sentence whole sentence with count and worst, ready to print
 * @param count how often, in the unit of the sentence (hours or days)
 * @param worst the worst value, in the unit of the sentence
 */
public record Warning(String key, String sentence, double count, double worst) {}
