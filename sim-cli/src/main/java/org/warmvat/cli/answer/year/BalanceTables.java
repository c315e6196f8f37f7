package org.warmvat.cli.answer.year;

import java.util.List;
import java.util.Locale;
import org.warmvat.account.Books;
import org.warmvat.account.Ledger;
import org.warmvat.account.Period;
import org.warmvat.cli.answer.Columns;
import org.warmvat.cli.answer.Table;
import org.warmvat.cli.words.Words;
import org.warmvat.question.year.YearResult;

/** The three heat balances term by term, month by month and in all. */
final class BalanceTables {

    private static final double LEAST_KWH = 1e-4;

    private BalanceTables() {}

    static List<Table> of(YearResult run) {
        return run.whole().books().ledgers().stream()
                .map(ledger -> table(ledger, run))
                .toList();
    }

    /** How well the balances close, in a sentence. */
    private static String closing(YearResult run) {
        return String.format(
                Locale.ROOT,
                "What came in stands with a plus, what went out or was stored with a minus; the residual is what does not add up:"
                        + " the largest of all balances is %.1e of the %s of heat that passed through.",
                run.whole().of(Books.RESIDUAL_FRACTION),
                Words.kWh(run.whole().of(Books.PASSED_THROUGH)));
    }

    private static Table table(Ledger ledger, YearResult run) {
        Columns<Period> columns = new Columns<>();
        ledger.items()
                .forEach(item -> columns.cell(
                        item.line().name(), period -> Words.number(term(item.factor() * period.of(item.line())))));
        columns.cell("residual", period -> residual(period.of(ledger.balance().residual())));
        String caption =
                ledger.balance().name() + ", " + ledger.balance().unit().text();
        return columns.named("month", caption, MonthlyTable.rows(run)).totalledOnPage(closing(run));
    }

    /** Less than a tenth of a watt-hour is nothing beside what goes through. */
    private static double term(double kWh) {
        return Math.abs(kWh) < LEAST_KWH ? 0 : kWh;
    }

    private static String residual(double kWh) {
        return kWh == 0 ? "0" : String.format(Locale.ROOT, "%.1e", kWh);
    }
}
