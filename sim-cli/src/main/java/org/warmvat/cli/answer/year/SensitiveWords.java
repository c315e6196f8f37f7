package org.warmvat.cli.answer.year;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.warmvat.cli.answer.Draft;
import org.warmvat.cli.answer.Table;
import org.warmvat.cli.words.Numerals;
import org.warmvat.cli.words.Words;
import org.warmvat.question.sensitive.SensitiveResult;
import org.warmvat.question.sensitive.SensitiveResult.Figures;

/** What the year becomes with numbers that nobody knows well and that the design leaves to their defaults. */
final class SensitiveWords {

    private static final int HANDFUL = 5;

    private final SensitiveResult result;

    /** Tells a result. */
    SensitiveWords(SensitiveResult result) {
        this.result = result;
    }

    /** The handful on which the answer hangs most, with what it becomes. */
    List<String> weighty() {
        return result.entries().stream().limit(HANDFUL).map(this::sentence).toList();
    }

    private String sentence(SensitiveResult.Entry entry) {
        return "The " + entry.number().name() + " (" + key(entry) + ") was taken as "
                + numbers(entry.taken()) + unit(entry) + ": at "
                + numbers(entry.low().values()) + said(entry.low())
                + " " + becomes(entry.low().figures()) + ", at "
                + numbers(entry.high().values()) + said(entry.high()) + " "
                + becomes(entry.high().figures()) + ".";
    }

    /** The one number that was moved, or what stands for several. */
    private static String key(SensitiveResult.Entry entry) {
        return entry.taken().size() == 1
                ? entry.taken().keySet().iterator().next()
                : entry.number().key();
    }

    private static String said(SensitiveResult.End end) {
        return end.held() ? " (as far as it may go)" : "";
    }

    private static String unit(SensitiveResult.Entry entry) {
        return entry.number().unit().isEmpty() ? "" : " " + entry.number().unit();
    }

    private static String numbers(Map<String, Double> values) {
        return Words.list(values.values().stream().distinct().map(Words::number).toList());
    }

    private String net() {
        return result.useful() ? "useful net energy" : "net energy";
    }

    private String becomes(Figures figures) {
        String energy = figures.netKWh().isPresent()
                ? "the " + net() + " is about " + Words.kWh(figures.netKWh().getAsDouble())
                : "heater and machinery take about " + Words.kWh(figures.takenKWh());
        return figures.shortHours() == result.base().shortHours()
                ? energy
                : energy + " and " + Words.hours(figures.shortHours()) + " hours are below the minimum";
    }

    /** All of them. */
    Table table() {
        List<List<String>> rows = new ArrayList<>();
        rows.add(row("as taken", "", result.base()));
        for (SensitiveResult.Entry entry : result.entries()) {
            String name = entry.number().name();
            rows.add(row(
                    name,
                    numbers(entry.low().values()) + unit(entry) + star(entry.low()),
                    entry.low().figures()));
            rows.add(row(
                    name,
                    numbers(entry.high().values()) + unit(entry) + star(entry.high()),
                    entry.high().figures()));
        }
        return new Table(
                        "Numbers that nobody knows well, which the design leaves to their defaults; those that matter most first",
                        List.of(
                                "number",
                                "at",
                                net() + ", kWh",
                                "heater and machinery, kWh",
                                "hours below minimum",
                                "slurry mean, °C"),
                        rows)
                .onPageOnly(
                        "Each was run a fifth lower and a fifth higher, temperatures 2 K, all else as it was. * as far as its"
                                + " range or the rest of the design lets it go.");
    }

    private static String star(SensitiveResult.End end) {
        return end.held() ? " *" : "";
    }

    private static List<String> row(String name, String at, Figures figures) {
        return List.of(
                name,
                at,
                Words.number(figures.netKWh().orElse(Double.NaN)),
                Words.number(figures.takenKWh()),
                Words.hours(figures.shortHours()),
                Numerals.fixed(figures.meanC(), 1));
    }

    /** Figures of {@code summary.json}. */
    List<Map<String, Object>> figures() {
        return result.entries().stream()
                .map(entry -> Draft.row(
                        "key", key(entry),
                        "taken", entry.taken(),
                        "low", end(entry.low()),
                        "high", end(entry.high())))
                .toList();
    }

    private Map<String, Object> end(SensitiveResult.End end) {
        String net = result.useful() ? "useful_net_energy_kwh" : "net_energy_kwh";
        Map<String, Object> row = Draft.row(
                "values", end.values(), "held", end.held(), net, end.figures().netKWh());
        row.putAll(Draft.row(
                "taken_kwh", end.figures().takenKWh(),
                "hours_below_floor", end.figures().shortHours(),
                "slurry_mean_c", end.figures().meanC()));
        return row;
    }
}
