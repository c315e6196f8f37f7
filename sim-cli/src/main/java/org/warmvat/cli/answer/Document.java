package org.warmvat.cli.answer;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.warmvat.cli.answer.folder.ResultsFolder;
import org.warmvat.cli.answer.folder.SummaryWriter;
import org.warmvat.cli.plot.Picture;

/**
 * A whole answer, before it is set: one writer each turns it into terminal text ({@link TerminalText}), a page ({@link Page}), JSON
 * ({@link SummaryWriter}), CSV ({@link Csv}) and a folder ({@link ResultsFolder}). Made with {@link Draft}.
 *
 * @param heading what it is about
 * @param verdict the answer in a sentence, with its "but"
 * @param body what is read
 * @param data what other programs read
 * @param grounds what it stands on
 */
public record Document(Heading heading, Verdict verdict, Body body, Data data, Grounds grounds) {

    /**
     * What the answer is about.
     *
     * @param command name of the command
     * @param title title of the design with the question
     * @param subtitle tank, weather, engine
     * @param block the title block: for whom, by whom, when, a note; empty where the design has none
     */
    public record Heading(String command, String title, String subtitle, List<String> block) {}

    /**
     * The answer in short; its two parts always stand in one box.
     *
     * @param sentence the answer in one sentence
     * @param but what the reader must know before he acts on it, the gravest first
     */
    public record Verdict(String sentence, List<String> but) {}

    /**
     * A figure of the verdict's box.
     *
     * @param name what it is, in a word or two
     * @param value number with unit
     */
    public record KeyFigure(String name, String value) {}

    /**
     * What is read.
     *
     * @param keyFigures the handful of figures that belong to the verdict
     * @param paragraphs the answer in plain sentences
     * @param tables tables
     * @param pictures pictures, none where they could not be drawn
     * @param notDrawn why there are none
     */
    public record Body(
            List<KeyFigure> keyFigures,
            List<Paragraph> paragraphs,
            List<Table> tables,
            List<Picture> pictures,
            Optional<String> notDrawn) {

        /** As many as go on two printed pages together with the answer. */
        private static final int MOST_BEFORE_ANNEX = 3;

        private static final Set<String> OF_THE_TANK = Set.of(TankPicture.NAME, HeatLossPicture.NAME);

        /** The pictures that stand right after the verdict: what was asked about. */
        public List<Picture> ofTheTank() {
            return pictures.stream()
                    .filter(picture -> OF_THE_TANK.contains(picture.name()))
                    .toList();
        }

        /** The first pictures of what was found, which stand before the annex. */
        public List<Picture> first() {
            return ofTheFindings().limit(MOST_BEFORE_ANNEX).toList();
        }

        /** The further ones, which stand in it. */
        public List<Picture> further() {
            return ofTheFindings().skip(MOST_BEFORE_ANNEX).toList();
        }

        private Stream<Picture> ofTheFindings() {
            return pictures.stream().filter(picture -> !OF_THE_TANK.contains(picture.name()));
        }
    }

    /**
     * What other programs read.
     *
     * @param figures own block of {@code summary.json}: numbers, text, truth, lists and further maps; null for what is not there
     * @param csv tables by file name
     * @param texts further text files by file name, such as a design
     * @param copied files that are copied into the folder, by file name
     */
    public record Data(
            Map<String, Object> figures, Map<String, Csv> csv, Map<String, String> texts, Map<String, Path> copied) {}
}
