package org.warmvat.cli.answer.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.warmvat.cli.answer.Columns;
import org.warmvat.cli.answer.Csv;
import org.warmvat.cli.answer.Document;
import org.warmvat.cli.answer.Draft;
import org.warmvat.cli.answer.Subject;
import org.warmvat.cli.answer.Table;
import org.warmvat.question.compare.CompareResult;
import org.warmvat.question.compare.CompareResult.Column;
import org.warmvat.question.compare.CompareResult.Difference;

/** The answer to {@code compare}. */
public final class CompareAnswer {

    private final CompareResult result;
    private final List<Subject> each;
    private final List<String> names;

    private CompareAnswer(CompareResult result, List<Subject> each, List<String> names) {
        this.result = result;
        this.each = each;
        this.names = names;
    }

    /**
     * Tells what was found.
     *
     * @param result what was found
     * @param asked what it is about
     * @param each the same for each column alone
     * @param names names of the columns
     */
    public static Document of(CompareResult result, Subject asked, List<Subject> each, List<String> names) {
        return new CompareAnswer(result, each, names).told(asked).done();
    }

    private Draft told(Subject asked) {
        CompareWords words = new CompareWords(result, names);
        Draft draft = Draft.of(asked, "which is better at what?")
                .verdict(words.verdict(), List.of())
                .items("Which is better at what", words.sentences())
                .paragraph("What differs in the inputs", differencesInWords())
                .tables(tables())
                .figure(
                        "compare",
                        Draft.row(
                                "designs", designs(),
                                "differences",
                                        result.differences().stream()
                                                .map(this::difference)
                                                .toList()))
                .csv("compare.csv", csv())
                .pictures(() -> ComparePictures.of(result.columns(), names));
        for (int i = 0; i < names.size(); i++) {
            draft.each(names.get(i), each.get(i), result.columns().get(i).warnings());
        }
        if (!pricesAreOwn()) {
            draft.assume("Money is left out: not all of the designs give prices of their own in one currency.");
        }
        return draft;
    }

    private boolean pricesAreOwn() {
        return each.stream().noneMatch(Subject::pricesAreExamples)
                && result.columns().stream()
                                .map(column -> column.drawn().prices().currency())
                                .distinct()
                                .count()
                        == 1;
    }

    private List<String> differencesInWords() {
        if (!result.differences().isEmpty()) {
            return List.of();
        }
        boolean several = result.columns().stream().anyMatch(column -> column.design() > 0);
        return List.of(
                several ? "The designs are the same in every key." : "The design is one; only the weather differs.");
    }

    private List<Table> tables() {
        List<Figure> figures = figures();
        List<Table> tables = new ArrayList<>(List.of(figures(figures)));
        if (names.size() > 2) {
            tables.add(differencesFromFirst(figures));
        }
        if (!result.differences().isEmpty()) {
            tables.add(inputs());
        }
        return tables;
    }

    private List<Figure> figures() {
        List<Figure> figures = new ArrayList<>(Figure.ALL);
        if (pricesAreOwn()) {
            figures.add(Figure.balance(result.columns().get(0).drawn().prices().currency()));
        }
        return figures.stream().filter(figure -> figure.isIn(result.columns())).toList();
    }

    private Table figures(List<Figure> figures) {
        Columns<Figure> table = new Columns<Figure>().cell("figure", Figure::name);
        for (int i = 0; i < names.size(); i++) {
            Column column = result.columns().get(i);
            table.cell(names.get(i), figure -> figure.cell(column));
        }
        if (names.size() == 2) {
            table.cell("second less first", figure -> lessFirst(figure, 1));
        }
        return table.table("Side by side", figures);
    }

    private Table differencesFromFirst(List<Figure> figures) {
        Columns<Figure> table = new Columns<Figure>().cell("figure", Figure::name);
        for (int i = 1; i < names.size(); i++) {
            int column = i;
            table.cell(names.get(i), figure -> lessFirst(figure, column));
        }
        return table.table("Each less " + names.get(0), figures);
    }

    private String lessFirst(Figure figure, int column) {
        return figure.difference(result.columns().get(column), result.columns().get(0));
    }

    private Table inputs() {
        Columns<Difference> table = new Columns<Difference>().cell("key", Difference::key);
        for (int i = 0; i < names.size(); i++) {
            int design = result.columns().get(i).design();
            table.cell(
                    names.get(i), difference -> difference.values().get(design).orElse("–"));
        }
        return table.table("What differs in the inputs", result.differences());
    }

    /** The value of each column. */
    private Stream<Optional<String>> values(Difference difference) {
        return result.columns().stream().map(column -> difference.values().get(column.design()));
    }

    private Map<String, Object> difference(Difference difference) {
        return Draft.row(
                "key", difference.key(),
                "values", values(difference).map(value -> value.orElse(null)).toList());
    }

    private List<Map<String, Object>> designs() {
        return IntStream.range(0, names.size())
                .mapToObj(i -> Draft.row(
                        "name", names.get(i),
                        "figures", result.columns().get(i).year().figures()))
                .toList();
    }

    /** Designs and weather files by their numbers, since no text of the user may stand in a table for other programs. */
    private Csv csv() {
        Columns<Column> columns = new Columns<Column>()
                .value("design", column -> column.design() + 1)
                .value("weather", column -> column.file() + 1);
        result.columns().stream()
                .flatMap(column -> column.year().books().lines().stream())
                .distinct()
                .forEach(line -> columns.value(
                        line.column(),
                        column -> column.year().has(line) ? column.year().of(line) : null));
        return columns.csv(result.columns());
    }
}
