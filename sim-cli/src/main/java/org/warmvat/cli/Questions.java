package org.warmvat.cli;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.warmvat.cli.option.OptionWord;
import org.warmvat.cli.words.Numerals;

/** Questions on a terminal, each with a default that an empty line takes. */
final class Questions {

    private static final int MOST_TRIES = 5;

    private final BufferedReader in;
    private final PrintWriter out;

    Questions(BufferedReader in, PrintWriter out) {
        this.in = in;
        this.out = out;
    }

    /**
     * A number.
     *
     * @param question what is asked, with its unit
     * @param usual what an empty line means
     */
    double number(String question, double usual, double least, double most) {
        return optional(question, Optional.of(usual), least, most).orElseThrow();
    }

    /** A number that may be left to the program's rules, by an empty line. */
    OptionalDouble optional(String question, double least, double most) {
        return optional(question, Optional.empty(), least, most);
    }

    private OptionalDouble optional(String question, Optional<Double> usual, double least, double most) {
        String shown = usual.map(Numerals::exact).orElse("by rule");
        for (int tries = 0; tries < MOST_TRIES; tries++) {
            String line = text(question, shown);
            if (line.isEmpty()) {
                return usual.map(OptionalDouble::of).orElseGet(OptionalDouble::empty);
            }
            try {
                double value = Double.parseDouble(line.replace(',', '.'));
                if (value >= least && value <= most) {
                    return OptionalDouble.of(value);
                }
            } catch (NumberFormatException noNumber) {
                // told below like a number out of range
            }
            out.println(
                    "  \"" + line + "\", expected a number, " + Numerals.exact(least) + " to " + Numerals.exact(most));
        }
        throw new NoAnswer(question);
    }

    /** One of some words. */
    <E extends Enum<E>> E word(String question, E[] all, E usual) {
        String words = String.join(", ", OptionWord.all(all));
        for (int tries = 0; tries < MOST_TRIES; tries++) {
            String line = text(question + " (" + words + ")", OptionWord.of(usual));
            Optional<E> meant = Stream.of(all)
                    .filter(one -> line.equals(OptionWord.of(one)) || (line.isEmpty() && one == usual))
                    .findFirst();
            if (meant.isPresent()) {
                return meant.get();
            }
            out.println("  \"" + line + "\", expected one of " + words);
        }
        throw new NoAnswer(question);
    }

    /** Any text; empty for none. */
    String text(String question, String usual) {
        out.print(question + " [" + usual + "]: ");
        out.flush();
        try {
            String line = in.readLine();
            if (line == null) {
                throw new NoAnswer(question);
            }
            return line.strip();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    /** A question that was not answered. */
    static final class NoAnswer extends RuntimeException {
        private static final long serialVersionUID = 1;

        NoAnswer(String question) {
            super("no answer to: " + question);
        }
    }
}
