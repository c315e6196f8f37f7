package org.warmvat.cli.file;

import java.util.List;
import java.util.Random;

/** Changes a text by chance. */
public final class Mutations {

    /** How many changed texts there are in all, over all kinds. */
    public static final int CASES = Integer.getInteger("fuzz.cases", 900);

    /** From where chance starts. */
    public static final long SEED = 15;

    private static final List<String> WORDS = List.of(
            "",
            "0",
            "-1",
            "1e9",
            "1e-9",
            "NaN",
            ".inf",
            "null",
            "~",
            "true",
            "[]",
            "{}",
            "\"",
            "°C",
            "99999999999999999999",
            "1,5",
            "2025-13-45T99:99",
            "\u0000",
            "😀",
            "- ",
            ": ",
            "#",
            "&a",
            "*a",
            "!!str",
            "<<",
            "\t",
            "5e-324",
            "-273.16",
            "off");

    private Mutations() {}

    /** One to three changes: a piece cut out, doubled, moved, a word put in, a number made another, a letter lost. */
    public static String of(String text, Random random) {
        String changed = text;
        for (int i = random.nextInt(3); i >= 0; i--) {
            changed = once(changed, random);
        }
        return changed;
    }

    private static String once(String text, Random random) {
        if (text.length() < 2) {
            return text + WORDS.get(random.nextInt(WORDS.size()));
        }
        int from = random.nextInt(text.length());
        int to = Math.min(text.length(), from + 1 + random.nextInt(40));
        String word = WORDS.get(random.nextInt(WORDS.size()));
        String before = text.substring(0, from);
        String piece = text.substring(from, to);
        String after = text.substring(to);
        return switch (random.nextInt(7)) {
            case 0 -> before + after;
            case 1 -> before + piece + piece + after;
            case 2 -> before + word + piece + after;
            case 3 -> before + word + after;
            case 4 -> before + piece.replaceFirst("[0-9.]+", word.isEmpty() ? "7" : word) + after;
            case 5 -> before + piece.replaceFirst("[a-z_]", "") + after;
            default -> before;
        };
    }
}
