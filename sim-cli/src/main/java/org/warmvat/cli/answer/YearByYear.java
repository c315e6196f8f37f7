package org.warmvat.cli.answer;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.warmvat.cli.answer.Document.KeyFigure;
import org.warmvat.cli.words.Telling;
import org.warmvat.network.Warning;

/**
 * One answer of several years: that of the worst year in full, the middle year beside it, and what each year says, by its name. For all
 * questions alike.
 */
public final class YearByYear {

    private YearByYear() {}

    /**
     * The answer of one year.
     *
     * @param answer its answer
     * @param badness how bad the year is for the question: the more, the worse
     */
    public record Judged(Document answer, double badness) {}

    /**
     * The same with the name of the year, by which it is told from others.
     *
     * @param name the name
     * @param judged the answer
     */
    public record Told(String name, Judged judged) {

        private Document answer() {
            return judged.answer();
        }

        private Map<String, Object> figures() {
            return answer().data().figures();
        }
    }

    /**
     * Makes one answer of several.
     *
     * @param years in the order in which they are told; of two that are alike the first is the worse; of one its answer is the answer
     */
    public static Document of(List<Told> years) {
        if (years.size() == 1) {
            return years.get(0).answer();
        }
        List<Told> worstFirst = years.stream()
                .sorted(Comparator.comparingDouble((Told year) -> -year.judged().badness()))
                .toList();
        Told worst = worstFirst.get(0);
        Told middle = worstFirst.get(worstFirst.size() / 2);
        return new Document(
                heading(years.size(), worst),
                verdict(years.size(), worst, middle),
                body(years, worst.answer()),
                data(years, worst, middle),
                grounds(years, worst));
    }

    private static Document.Heading heading(int years, Told worst) {
        Document.Heading full = worst.answer().heading();
        String subtitle = full.subtitle() + "; the worst of " + years + " years, " + worst.name();
        return new Document.Heading(full.command(), full.title(), subtitle, full.block());
    }

    private static Document.Verdict verdict(int years, Told worst, Told middle) {
        Document.Verdict full = worst.answer().verdict();
        return new Document.Verdict(
                "In the worst of " + years + " years, " + worst.name() + ": " + full.sentence(),
                new Telling()
                        .say("In the middle year, " + middle.name() + ": "
                                + middle.answer().verdict().sentence())
                        .say(full.but())
                        .done());
    }

    private static Document.Body body(List<Told> years, Document full) {
        Document.Body worst = full.body();
        Paragraph each = new Paragraph(
                "What does each year say?",
                new Telling()
                        .each(
                                years,
                                year -> year.name() + ": "
                                        + year.answer().verdict().sentence())
                        .say("All that follows is of the worst year.")
                        .done(),
                true);
        Stream<Table> table = worst.keyFigures().isEmpty() ? Stream.of() : Stream.of(table(years));
        return new Document.Body(
                worst.keyFigures(),
                Stream.concat(Stream.of(each), worst.paragraphs().stream()).toList(),
                Stream.concat(table, worst.tables().stream()).toList(),
                worst.pictures(),
                worst.notDrawn());
    }

    private static Table table(List<Told> years) {
        Set<String> names = new LinkedHashSet<>();
        years.forEach(year -> year.answer().body().keyFigures().forEach(figure -> names.add(figure.name())));
        List<String> header = new ArrayList<>(List.of("year"));
        header.addAll(names);
        return new Table(
                "Year by year",
                header,
                years.stream().map(year -> row(year, names)).toList());
    }

    private static List<String> row(Told year, Set<String> names) {
        List<String> row = new ArrayList<>(List.of(year.name()));
        for (String name : names) {
            row.add(year.answer().body().keyFigures().stream()
                    .filter(figure -> figure.name().equals(name))
                    .map(KeyFigure::value)
                    .findFirst()
                    .orElse("–"));
        }
        return row;
    }

    private static Document.Data data(List<Told> years, Told worst, Told middle) {
        Document.Data full = worst.answer().data();
        Map<String, Object> figures = new LinkedHashMap<>(full.figures());
        figures.put("worst_year", worst.name());
        figures.put("middle_year", middle.name());
        figures.put(
                "years",
                years.stream()
                        .map(year -> Draft.row(
                                "name", year.name(),
                                "verdict", year.answer().verdict().sentence(),
                                "figures", year.figures()))
                        .toList());
        return new Document.Data(figures, full.csv(), full.texts(), full.copied());
    }

    /** What stands on all years, the warnings of other years than the worst with their names. */
    private static Grounds grounds(List<Told> years, Told worst) {
        Grounds full = worst.answer().grounds();
        List<Warning> warnings = new ArrayList<>(full.warnings());
        Set<String> assumed = new LinkedHashSet<>(full.assumed());
        for (Told year : years) {
            Grounds grounds = year.answer().grounds();
            assumed.addAll(grounds.assumed());
            grounds.warnings().stream()
                    .filter(warning -> full.warnings().stream()
                            .noneMatch(one -> one.key().equals(warning.key()) && one.count() >= warning.count()))
                    .map(warning -> Grounds.saying(warning, "In " + year.name() + ": " + warning.sentence()))
                    .forEach(warnings::add);
        }
        return full.with(warnings, assumed);
    }
}
