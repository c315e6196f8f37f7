package org.warmvat.cli.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import org.warmvat.result.Period;
import org.warmvat.result.RunResult;

/** The three heat balances term by term, month by month and in all. */
final class BalanceTables {

    private record Term(String name, ToDoubleFunction<Period> kWh) {}

    private static final List<Term> SLURRY = List.of(
            new Term("sun", period -> period.heats().solarKWh()),
            new Term("backup", period -> period.heats().backupKWh()),
            new Term("shaft", period -> period.heats().shaftKWh()),
            new Term("reaction", period -> period.heats().reactionKWh()),
            new Term("wall", period -> -period.losses().wallKWh()),
            new Term("dry wall", period -> -period.losses().dryWallKWh()),
            new Term("lid", period -> -period.losses().lidKWh()),
            new Term("floor", period -> -period.losses().floorKWh()),
            new Term("fittings", period -> -period.losses().fittingsKWh()),
            new Term("feed", period -> -period.heats().feedKWh()),
            new Term("gas", period -> -period.heats().gasKWh()),
            new Term("stored, slurry", period -> -period.stored().slurryKWh()),
            new Term("stored, envelope", period -> -period.stored().envelopeKWh()),
            new Term("residual", period -> period.ledger().slurryResidualKWh()));

    private static final List<Term> COLLECTOR = List.of(
            new Term("absorbed", period -> period.circuits().collectorAbsorbedKWh()),
            new Term("lost", period -> -period.circuits().collectorLossKWh()),
            new Term("to the slurry", period -> -period.heats().solarKWh()),
            new Term("stored", period -> -period.stored().collectorKWh()),
            new Term("residual", period -> period.ledger().collectorResidualKWh()));

    private static final List<Term> BACKUP = List.of(
            new Term("put in", period -> period.circuits().backupPowerKWh()),
            new Term("lost", period -> -period.circuits().backupLossKWh()),
            new Term("to the slurry", period -> -period.heats().backupKWh()),
            new Term("stored", period -> -period.stored().backupCircuitKWh()),
            new Term("residual", period -> period.ledger().backupResidualKWh()));

    private BalanceTables() {}

    static List<Table> of(RunResult run) {
        List<Table> tables = new ArrayList<>();
        tables.add(table("Slurry with envelope, kWh", SLURRY, run));
        if (run.marks().hasSolar()) {
            tables.add(table("Solar circuit, kWh", COLLECTOR, run));
        }
        if (run.marks().hasBackup()) {
            tables.add(table("Backup circuit, kWh", BACKUP, run));
        }
        return tables;
    }

    /** How well the balances close, in a sentence. */
    static String closing(RunResult run) {
        return String.format(
                Locale.ROOT,
                "The largest residual of the three balances is %.1e of the %s of heat that passed through.",
                run.year().ledger().residualFraction(),
                Words.kWh(run.year().ledger().passedThroughKWh()));
    }

    private static Table table(String caption, List<Term> terms, RunResult run) {
        List<String> header = new ArrayList<>(List.of("month"));
        terms.forEach(term -> header.add(term.name()));
        List<List<String>> rows = new ArrayList<>();
        run.months().forEach(month -> rows.add(row(MonthlyTable.label(month), terms, month)));
        rows.add(row("all", terms, run.year()));
        return new Table(caption, header, rows);
    }

    private static List<String> row(String label, List<Term> terms, Period period) {
        List<String> row = new ArrayList<>(List.of(label));
        for (Term term : terms) {
            double kWh = term.kWh().applyAsDouble(period);
            row.add("residual".equals(term.name()) ? residual(kWh) : Words.number(kWh));
        }
        return row;
    }

    private static String residual(double kWh) {
        return kWh == 0 ? "0" : String.format(Locale.ROOT, "%.1e", kWh);
    }
}
