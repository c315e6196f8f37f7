package org.warmvat.cli.page;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.warmvat.cli.answer.Document;
import org.warmvat.question.Parallel;

/** What can be asked of a design and weather: the commands of the command line, in its own words. */
public interface Questions {

    /**
     * A question.
     *
     * @param name name of the command
     * @param says what it tells, in a sentence
     * @param more what else is to be known of it
     * @param fields what may be set
     * @param files further files it takes, by the name they have in its help
     * @param pinned whether it compares with another design
     */
    record Question(String name, String says, String more, List<Field> fields, List<Slot> files, boolean pinned) {}

    /**
     * An option.
     *
     * @param name as on the command line, such as {@code --from}
     * @param form what it wants, such as {@code MM-DD}; empty for a switch
     * @param says its help
     * @param usual what holds when it is not set; empty where nothing is written
     */
    record Field(String name, String form, String says, String usual) {}

    /**
     * A file that is asked for.
     *
     * @param name an option such as {@code --uncertain}, or the name of an argument such as {@code LOG}
     * @param says its help
     * @param needed whether it goes without
     */
    record Slot(String name, String says, boolean needed) {}

    /**
     * What the page lays out in a folder of its own before it asks.
     *
     * @param design the design
     * @param pinned the design it is compared with
     * @param weather the weather
     * @param files further files by the names of their slots
     */
    record Given(Path design, Optional<Path> pinned, WeatherGiven weather, Map<String, Path> files) {}

    /**
     * A weather file and how it is read.
     *
     * @param file the file
     * @param layout its layout file, where it has one
     * @param fillHolesH longest hole that is filled, h
     */
    record WeatherGiven(Path file, Optional<Path> layout, int fillHolesH) {}

    /** Everything that can be asked. */
    List<Question> all();

    /**
     * Asks.
     *
     * @param question its name
     * @param options values by the names of the fields; a switch has an empty value
     * @param given the files
     * @param progress told how far it is
     * @throws NotAnswered with the program's own sentences when there is no answer
     */
    Document answer(String question, Map<String, String> options, Given given, Parallel.Progress progress)
            throws NotAnswered;

    /**
     * The commented design that a size and a climate lead to.
     *
     * @throws NotAnswered with the program's own sentences when there is none
     */
    String starter(String litres, String setpointC, WeatherGiven weather) throws NotAnswered;

    /** There is no answer. */
    final class NotAnswered extends Exception {

        private static final long serialVersionUID = 1L;

        private final transient List<String> sentences;

        /** Says why, in the program's own sentences. */
        public NotAnswered(List<String> sentences) {
            super(String.join("\n", sentences));
            this.sentences = List.copyOf(sentences);
        }

        /** Why not. */
        public List<String> sentences() {
            return sentences;
        }
    }
}
