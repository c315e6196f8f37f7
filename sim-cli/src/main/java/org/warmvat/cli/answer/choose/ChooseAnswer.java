package org.warmvat.cli.answer.choose;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.warmvat.cli.answer.Columns;
import org.warmvat.cli.answer.Csv;
import org.warmvat.cli.answer.Document;
import org.warmvat.cli.answer.Draft;
import org.warmvat.cli.answer.Subject;
import org.warmvat.cli.answer.Table;
import org.warmvat.cli.answer.YearRows;
import org.warmvat.cli.words.AxisWords;
import org.warmvat.cli.words.Numerals;
import org.warmvat.cli.words.Words;
import org.warmvat.design.Design;
import org.warmvat.question.choose.Candidate;
import org.warmvat.question.choose.Catalogue;
import org.warmvat.question.choose.Choice;
import org.warmvat.question.choose.ChooseResult;
import org.warmvat.question.choose.Yearly;

/** The answer to {@code choose}. */
public final class ChooseAnswer {

    private static final int RUNNER_UP = 1;

    private final ChooseResult result;
    private final Catalogue catalogue;
    private final String currency;
    private final String once;
    private final ChooseWords words;

    private ChooseAnswer(ChooseResult result, Catalogue catalogue, Subject asked) {
        this.result = result;
        this.catalogue = catalogue;
        currency = asked.currency();
        once = asked.unstated().contains("prices.currency")
                ? "of your money"
                : catalogue.drawn().prices().currency();
        words = new ChooseWords(result, currency, once);
    }

    /**
     * Tells what was found; the design told of is the best.
     *
     * @param asked what the command was asked about, with the design as drawn
     * @param assumed what the file of choices leaves to defaults
     */
    public static Document of(ChooseResult result, Catalogue catalogue, Subject asked, List<String> assumed) {
        Design chosen = catalogue.design(result.best().point());
        return new ChooseAnswer(result, catalogue, asked)
                .told(new Subject(asked.command(), Optional.of(chosen), asked.years(), asked.engine(), asked.reading()))
                .assume(assumed.toArray(new String[0]))
                .done();
    }

    private Draft told(Subject asked) {
        YearRows years = years(asked);
        Map<String, Object> chosen = figures();
        chosen.putAll(years.figures());
        Draft draft = Draft.of(asked, "chosen")
                .verdict(words.verdict(), words.but(asked.pricesAreExamples()))
                .paragraph("What was tried?", words.effort())
                .paragraph("What else?", words.others())
                .paragraph("Which choice matters most?", words.influence())
                .paragraph("What does each year say of the best?", years.sentences())
                .table(table())
                .tables(years.tables())
                .figure("choose", chosen)
                .csv("designs.csv", Csv.ofRows(designs()))
                .pictures(() -> new ChoosePictures(result, currency).all())
                .warn(result.best().warnings())
                .assume(
                        "The tank drawn, its defaults and its warnings are those of the design that is named best.",
                        "Energies and money are means of the weather files, a file shorter than a year counting in money as a piece of one;"
                                + " limits hold in every file.",
                        "Yearly cost is the annuity of the prices over "
                                + Words.number(catalogue.terms().years())
                                + " years at " + Words.percent(catalogue.terms().interest())
                                + " interest, energy and electricity bought and upkeep, less the worth of the gas.");
        if (result.best().allowed()) {
            draft.key("Yearly cost", words.aYear(result.best().cost().perYear()))
                    .key("To buy", words.money(result.best().cost().outlay()))
                    .key("Net energy", Words.kWh(result.best().yearly().net().meanKWh()));
        }
        return draft;
    }

    /** The best design in each year. */
    private YearRows years(Subject asked) {
        List<Yearly.Year> years = result.best().yearly().years();
        return new YearRows(IntStream.range(0, years.size())
                .mapToObj(i -> new YearRows.Row(
                        asked.yearName(i),
                        OptionalDouble.of(years.get(i).netKWh()),
                        years.get(i).boughtKWh(),
                        years.get(i).hoursBelowMinimum()))
                .toList());
    }

    private Map<String, Object> figures() {
        List<Candidate> named = result.named();
        ChooseResult.Effort effort = result.effort();
        Map<String, Object> figures = new LinkedHashMap<>();
        figures.put("by", result.by().name().toLowerCase(Locale.ROOT));
        figures.put("limits_met", result.best().allowed());
        figures.put("best", row(result.best()));
        figures.put("runner_up", named.size() > RUNNER_UP ? row(named.get(RUNNER_UP)) : null);
        figures.put("nearest", rows(named.subList(Math.min(named.size(), RUNNER_UP + 1), named.size())));
        figures.put("matters_most", result.mattersMost().choice());
        figures.put(
                "influence", result.influence().stream().map(ChooseAnswer::row).toList());
        figures.put("ties", rows(result.ties()));
        figures.put("front", rows(result.front().designs()));
        ChooseResult.Drawn drawn = result.drawn();
        figures.put("as_drawn", Draft.row("figures", figures(drawn.yearly(), drawn.outlay()), "cost", drawn.perYear()));
        figures.put("barred_by", effort.barredBy());
        figures.put("combinations", effort.points());
        figures.put("designs", effort.designs());
        figures.put("passed_over", effort.skipped());
        figures.put("runs", effort.runs());
        figures.put("exhaustive", effort.exhaustive());
        return figures;
    }

    private static List<Map<String, Object>> rows(List<Candidate> designs) {
        return designs.stream().map(ChooseAnswer::row).toList();
    }

    private static Map<String, Object> row(ChooseResult.Influence one) {
        return Draft.row(
                "choice", one.choice(),
                "change", one.change(),
                "worst", one.worst(),
                "options", one.options(),
                "options_barred", one.barred());
    }

    private static Map<String, Object> row(Candidate one) {
        return Draft.row(
                "choices", one.chosen(),
                "figures", figures(one.yearly(), one.cost().outlay()),
                "cost", one.cost().perYear(),
                "breaks", one.broken().stream().map(ChooseAnswer::row).toList());
    }

    private static Map<String, Object> row(Candidate.Broken limit) {
        return Draft.row("limit", limit.key(), "found", limit.found(), "allowed", limit.allowed());
    }

    private static Map<String, Object> figures(Yearly yearly, double outlay) {
        Map<String, Object> figures = Draft.row(
                "net_energy_kwh", yearly.net().meanKWh(),
                "net_energy_kwh_worst_file", yearly.net().worstKWh(),
                "net_energy_kwh_worst_month", yearly.net().worstMonthKWh(),
                "energy_bought_kwh", yearly.energy().boughtKWh(),
                "backup_bought_kwh", yearly.energy().backupKWh(),
                "electricity_total_kwh", yearly.energy().electricityKWh(),
                "gas_energy_kwh", yearly.energy().gasKWh(),
                "solar_heat_kwh", yearly.energy().solarKWh(),
                "hours_below_floor", yearly.hoursBelowMinimum(),
                "slurry_least_c", yearly.leastC(),
                "outlay", outlay,
                "energy_cost", yearly.money().energy(),
                "gas_worth", yearly.money().gasWorth());
        yearly.warmUpDays().ifPresent(days -> figures.putAll(Draft.row("warm_up_days", days)));
        return figures;
    }

    /** All designs that keep to the limits, else those that come nearest. */
    private List<Map<String, Object>> designs() {
        List<Candidate> all =
                result.front().all().isEmpty() ? result.named() : result.front().all();
        List<Map<String, Object>> rows = new ArrayList<>();
        for (Candidate one : all) {
            Map<String, Object> row = new LinkedHashMap<>();
            for (int i = 0; i < catalogue.choices().size(); i++) {
                // a label is the user's text: its place in the file stands for it
                Object shown = catalogue
                        .choices()
                        .get(i)
                        .options()
                        .get(one.point().get(i))
                        .shown();
                row.put(
                        "choice_" + (i + 1),
                        shown instanceof Double ? shown : one.point().get(i) + 1);
            }
            row.put("yearly_cost", one.cost().perYear());
            row.putAll(figures(one.yearly(), one.cost().outlay()));
            rows.add(row);
        }
        return rows;
    }

    /** A design of the table. */
    private record Row(String name, Function<Choice, String> option, double perYear, Yearly yearly, double outlay) {}

    private Table table() {
        Columns<Row> columns = new Columns<Row>().cell("", Row::name);
        for (Choice choice : catalogue.choices()) {
            boolean number = choice.options().get(0).shown() instanceof Double;
            columns.cell(
                    number ? AxisWords.of(choice.name()) : choice.name(),
                    row -> row.option().apply(choice));
        }
        columns.cell("yearly cost, " + currency, row -> Words.number(row.perYear()))
                .cell("to buy, " + once, row -> Words.number(row.outlay()))
                .cell("net energy, kWh", row -> Words.number(row.yearly().net().meanKWh()))
                .cell(
                        "bought for heat, kWh",
                        row -> Words.number(row.yearly().energy().boughtKWh()))
                .cell("hours below minimum", row -> Words.hours(row.yearly().hoursBelowMinimum()))
                .cell("lowest, °C", row -> Words.tenth(row.yearly().leastC()));
        List<Row> rows = new ArrayList<>();
        for (Candidate one : result.named()) {
            String name =
                    rows.isEmpty() ? "best" : rows.size() == RUNNER_UP ? "runner-up" : "next " + (rows.size() - 1);
            rows.add(new Row(
                    name,
                    choice -> option(one.chosen().get(choice.name())),
                    one.cost().perYear(),
                    one.yearly(),
                    one.cost().outlay()));
        }
        ChooseResult.Drawn drawn = result.drawn();
        rows.add(new Row("as drawn", choice -> "", drawn.perYear(), drawn.yearly(), drawn.outlay()));
        return columns.table("The best, and what comes next", rows);
    }

    private static String option(Object value) {
        return value instanceof Double number ? Numerals.exact(number) : value == null ? "–" : value.toString();
    }
}
