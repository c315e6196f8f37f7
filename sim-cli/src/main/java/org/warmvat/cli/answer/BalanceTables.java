package org.warmvat.cli.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.warmvat.account.Books;
import org.warmvat.account.Ledger;
import org.warmvat.account.Period;
import org.warmvat.question.year.YearResult;

/** The three heat balances term by term, month by month and in all. */
final class BalanceTables {

    private BalanceTables() {}

    static List<Table> of(YearResult run) {
        return run.whole().books().ledgers().stream()
                .map(ledger -> table(ledger, run))
                .toList();
    }

    /** How well the balances close, in a sentence. */
    static String closing(YearResult run) {
        return String.format(
                Locale.ROOT,
                "The largest residual of the three balances is %.1e of the %s of heat that passed through.",
                run.whole().of(Books.RESIDUAL_FRACTION),
                Words.kWh(run.whole().of(Books.PASSED_THROUGH)));
    }

    private static Table table(Ledger ledger, YearResult run) {
        List<String> header = new ArrayList<>(List.of("month"));
        ledger.items().forEach(item -> header.add(item.line().name()));
        header.add("residual");
        List<List<String>> rows = new ArrayList<>();
        run.months().forEach(month -> rows.add(row(MonthlyTable.label(month), ledger, month)));
        rows.add(row("all", ledger, run.whole()));
        return new Table(
                ledger.balance().name() + ", " + ledger.balance().unit().text(), header, rows);
    }

    private static List<String> row(String label, Ledger ledger, Period period) {
        List<String> row = new ArrayList<>(List.of(label));
        for (Ledger.Item item : ledger.items()) {
            row.add(Words.number(item.factor() * period.of(item.line())));
        }
        row.add(residual(period.of(ledger.balance().residual())));
        return row;
    }

    private static String residual(double kWh) {
        return kWh == 0 ? "0" : String.format(Locale.ROOT, "%.1e", kWh);
    }
}
