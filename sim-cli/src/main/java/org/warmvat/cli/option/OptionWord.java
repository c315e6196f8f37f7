package org.warmvat.cli.option;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import picocli.CommandLine;
import picocli.CommandLine.TypeConversionException;

/** Options that take one of some words: the names of an enum in small letters. */
public final class OptionWord {

    private OptionWord() {}

    /** The word of one. */
    public static String of(Enum<?> one) {
        return one.name().toLowerCase(Locale.ROOT);
    }

    /** All words, in order. */
    public static List<String> all(Enum<?>... all) {
        return Stream.of(all).map(OptionWord::of).toList();
    }

    /** From now on a command line knows these words. */
    public static <E extends Enum<E>> void register(CommandLine line, Class<E> type) {
        E[] all = type.getEnumConstants();
        line.registerConverter(
                type,
                word -> Stream.of(all)
                        .filter(one -> of(one).equals(word))
                        .findFirst()
                        .orElseThrow(() -> new TypeConversionException(
                                "\"" + word + "\", expected one of " + String.join(", ", all(all)))));
    }
}
