package org.warmvat.cli.answer;

import java.nio.file.Path;
import java.time.temporal.TemporalAccessor;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.Supplier;
import org.warmvat.account.Period;
import org.warmvat.cli.answer.Document.KeyFigure;
import org.warmvat.cli.answer.Document.Verdict;
import org.warmvat.cli.plot.Drawing;
import org.warmvat.cli.plot.Picture;
import org.warmvat.cli.plot.Pictures;
import org.warmvat.network.Warning;
import org.warmvat.question.GasRange;

/** A {@link Document} in the making. Warnings, assumptions and cautions of the inputs come by themselves. */
public final class Draft {

    private final Subject asked;
    private final String question;
    private Verdict verdict = new Verdict("", List.of());
    private final List<KeyFigure> keyFigures = new ArrayList<>();
    private Optional<Function<List<Warning>, VerdictCard>> card = Optional.empty();
    private final List<Paragraph> paragraphs = new ArrayList<>();
    private final List<Table> tables = new ArrayList<>();
    private final List<Supplier<List<Drawing>>> drawings = new ArrayList<>();
    private final Map<String, Object> figures = new LinkedHashMap<>();
    private final Map<String, Csv> csv = new LinkedHashMap<>();
    private final Map<String, String> texts = new LinkedHashMap<>();
    private final Map<String, Path> copied = new LinkedHashMap<>();
    private final List<Warning> warnings = new ArrayList<>();
    private final List<String> assumed = new ArrayList<>();
    private final List<String> weighty = new ArrayList<>();
    private final Map<String, Grounds> each = new LinkedHashMap<>();

    private Draft(Subject asked, String question) {
        this.asked = asked;
        this.question = question;
    }

    /**
     * Begins an answer.
     *
     * @param asked command and inputs
     * @param question stands behind the title of the inputs, such as {@code which heater?}; empty for none
     */
    public static Draft of(Subject asked, String question) {
        return new Draft(asked, question);
    }

    /**
     * The answer in one sentence.
     *
     * @param but what belongs in the same box; the gravest of the warnings are put before it by themselves
     */
    public Draft verdict(String sentence, List<String> but) {
        verdict = new Verdict(sentence, but);
        return this;
    }

    /** A figure beside the verdict, such as {@code Net energy: about 1230 kWh}. */
    public Draft key(String name, String value) {
        keyFigures.add(new KeyFigure(name, value));
        return this;
    }

    /** The five lines of a year, beside the verdict; what to mend first follows from all warnings of the answer. */
    public Draft card(Period run, Optional<GasRange> gas) {
        card = Optional.of(warned -> VerdictCard.of(run, gas, warned, asked));
        return this;
    }

    /** A heading with sentences under it; nothing where there are none. */
    public Draft paragraph(String heading, List<String> sentences) {
        if (!sentences.isEmpty()) {
            paragraphs.add(new Paragraph(heading, sentences, false));
        }
        return this;
    }

    /** The same with each sentence by itself. */
    public Draft items(String heading, List<String> sentences) {
        if (!sentences.isEmpty()) {
            paragraphs.add(new Paragraph(heading, sentences, true));
        }
        return this;
    }

    /** A table. */
    public Draft table(Table table) {
        tables.add(table);
        return this;
    }

    /** Tables. */
    public Draft tables(List<Table> several) {
        tables.addAll(several);
        return this;
    }

    /** Pictures, called for only where this machine can draw; elsewhere the answer has none and says why. */
    public Draft pictures(Supplier<List<Drawing>> several) {
        drawings.add(several);
        return this;
    }

    private Document.Body body() {
        List<Picture> pictures = List.of();
        Optional<String> notDrawn = Optional.empty();
        try {
            pictures = Pictures.of(this::drawn);
        } catch (Pictures.CannotDraw cannotDraw) {
            notDrawn = Optional.of(cannotDraw.getMessage());
        }
        return body(pictures, notDrawn);
    }

    private Document.Body body(List<Picture> pictures, Optional<String> notDrawn) {
        return new Document.Body(
                List.copyOf(keyFigures), List.copyOf(paragraphs), List.copyOf(tables), pictures, notDrawn);
    }

    private List<Drawing> drawn() {
        List<Drawing> drawn = new ArrayList<>();
        asked.given().map(TankPicture::of).ifPresent(drawn::add);
        if (asked.given().isPresent() && !asked.weathers().isEmpty()) {
            drawn.add(HeatLossPicture.of(asked.design(), asked.weather()));
        }
        drawings.forEach(several -> drawn.addAll(several.get()));
        return drawn;
    }

    /** A figure of {@code summary.json}: number, text, truth, list, map, each also optional; null for what is not there. */
    public Draft figure(String key, Object value) {
        figures.put(key, bare(value));
        return this;
    }

    /** What JSON and CSV take: the value itself, a time as text, null for what is not there. */
    static Object bare(Object value) {
        if (value instanceof OptionalDouble number) {
            return number.isPresent() ? (Double) number.getAsDouble() : null;
        }
        if (value instanceof Double number && !Double.isFinite(number)) {
            return null;
        }
        if (value instanceof Optional<?> some) {
            return some.map(Draft::bare).orElse(null);
        }
        return value instanceof TemporalAccessor time ? time.toString() : value;
    }

    /** Figures that belong together, in order: key, value, key, value. Also a row of a CSV file. */
    public static Map<String, Object> row(Object... keysAndValues) {
        Map<String, Object> row = new LinkedHashMap<>();
        for (int i = 0; i < keysAndValues.length; i += 2) {
            row.put((String) keysAndValues[i], bare(keysAndValues[i + 1]));
        }
        return row;
    }

    /** A table for other programs. */
    public Draft csv(String file, Csv table) {
        csv.put(file, table);
        return this;
    }

    /** A text for the folder of results, such as a design file. */
    public Draft text(String file, String content) {
        texts.put(file, content);
        return this;
    }

    /** A file that is copied into the folder of results. */
    public Draft copied(String file, Path from) {
        copied.put(file, from);
        return this;
    }

    /** What the runs warn of. */
    public Draft warn(List<Warning> ofRuns) {
        warnings.addAll(ofRuns);
        return this;
    }

    /** What this question assumes beside its inputs. */
    public Draft assume(String... sentences) {
        assumed.addAll(List.of(sentences));
        return this;
    }

    /** The defaults on which the answer hangs most, a sentence each. */
    public Draft weighty(List<String> defaults) {
        weighty.addAll(defaults);
        return this;
    }

    /**
     * One of several things that the answer is about, each with inputs and runs of its own.
     *
     * @param name by what it is told apart
     * @param own its design and weather
     * @param ofRuns what its runs warn of
     */
    public Draft each(String name, Subject own, List<Warning> ofRuns) {
        each.put(name, Grounds.of(own, ofRuns, List.of(), List.of()));
        return this;
    }

    /** The whole answer. */
    public Document done() {
        return document(this::body);
    }

    /** The answer without pictures, for who draws himself: many times faster. */
    public Document inWords() {
        return document(() -> body(List.of(), Optional.empty()));
    }

    private Document document(Supplier<Document.Body> body) {
        Grounds grounds =
                each.isEmpty() ? Grounds.of(asked, warnings, assumed, weighty) : Grounds.together(asked, each, assumed);
        card.map(drawn -> drawn.apply(grounds.warnings())).ifPresent(five -> {
            keyFigures.addAll(0, five.lines());
            figure("card", five.figures());
        });
        String title = question.isEmpty() ? asked.title() : asked.title() + ": " + question;
        return new Document(
                new Document.Heading(asked.command(), title, asked.subtitle(), asked.titleBlock()),
                new Verdict(verdict.sentence(), but(grounds)),
                body.get(),
                new Document.Data(figures, csv, texts, copied),
                grounds);
    }

    private List<String> but(Grounds grounds) {
        List<String> but = new ArrayList<>(each.isEmpty() ? grounds.gravest() : Grounds.gravest(each));
        verdict.but().stream().filter(sentence -> !but.contains(sentence)).forEach(but::add);
        return List.copyOf(but);
    }
}
