package org.warmvat.cli.answer.year;

import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.warmvat.account.Period;
import org.warmvat.cli.answer.Draft;
import org.warmvat.cli.answer.GasWords;
import org.warmvat.design.Design;
import org.warmvat.design.heating.BackupSource;
import org.warmvat.question.year.YearResult;
import org.warmvat.tank.Money;

/** The answer to {@code year} as figures for other programs. */
record YearFigures(YearResult run, Findings findings) {

    void tell(Draft draft, Optional<YearPayback> payback) {
        Design design = run.design();
        draft.figure("site", run.site().name())
                .figure("latitude_deg", run.site().latitudeDeg())
                .figure("engine", run.engine())
                .figure("run_in_days", run.runInDays())
                .figure("first_hour_start", run.hourly().start())
                .figure("setpoint_c", design.control().setpointC())
                .figure("floor_c", design.control().minimumC())
                .figure("liquid_volume_m3", design.tank().liquidVolumeM3())
                .figure("solar_circuit", design.solar().isPresent())
                .figure("backup_source", design.backup().map(backup -> source(backup.source())))
                .figure("gas_computed", design.gas().isPresent())
                .figure("primary_energy_factor", design.prices().primaryEnergyFactor())
                .figure("year", year())
                .figure("money", money());
        payback.ifPresent(more -> draft.figure("payback", more.figures()));
        draft.figure("months", months())
                .figure(
                        "seasons",
                        findings.seasons().stream().map(YearFigures::season).toList())
                .figure("coldest_day", findings.coldestDay())
                .figure("warmest_day", findings.warmestDay())
                .figure("worst_week", findings.worstWeek().map(YearFigures::worstWeek))
                .figure(
                        "starts",
                        Draft.row(
                                "solar_pump", findings.solarPump().map(YearFigures::starts),
                                "backup", findings.backup().map(YearFigures::starts)));
    }

    private static String source(BackupSource energy) {
        return switch (energy) {
            case ELECTRIC -> "electric";
            case OWN_GAS -> "own_gas";
            case FUEL -> "fuel";
        };
    }

    private Map<String, Object> money() {
        Money money = Money.of(run.design(), run.whole());
        Map<String, Object> row = Draft.row(
                "currency", run.design().prices().currency(),
                "backup_cost", money.backupCost());
        if (run.design().feed().hygienisation().isPresent()) {
            row.put("hygienisation_cost", money.hygienisationCost());
        }
        row.putAll(Draft.row(
                "electricity_cost", money.electricityCost(),
                "gas_worth", money.gasWorth(),
                "balance", money.balance(),
                "co2_kg", money.co2Kg()));
        return row;
    }

    private Map<String, Object> year() {
        Map<String, Object> year = run.whole().figures();
        run.gas().ifPresent(range -> year.putAll(GasWords.figures(range.whole())));
        return year;
    }

    private List<Map<String, Object>> months() {
        List<Map<String, Object>> rows = new ArrayList<>();
        for (Period month : run.months()) {
            Map<String, Object> row = Draft.row("month", month.label());
            row.putAll(month.figures());
            run.gas()
                    .map(range -> range.months().get(rows.size()))
                    .ifPresent(ends -> row.putAll(GasWords.figures(ends)));
            rows.add(row);
        }
        return rows;
    }

    private static Map<String, Object> season(Season season) {
        return Draft.row(
                "season", season.name(),
                "months", season.months().stream().map(YearMonth::toString).toList(),
                "solar_heat_kwh", season.solarKWh(),
                "backup_heat_kwh", season.backupKWh(),
                "solar_share", season.solarShare());
    }

    private static Map<String, Object> worstWeek(WorstWeek week) {
        return Draft.row(
                "first_day", week.firstDay(),
                "last_day", week.lastDay(),
                "chosen_by", week.mark().words(),
                "hours_below_floor", week.belowFloorHours(),
                "solar_heat_kwh", week.solarKWh(),
                "backup_heat_kwh", week.backupKWh(),
                "slurry_c", Draft.row("least", week.leastC(), "mean", week.meanC()));
    }

    private static Map<String, Object> starts(Starts starts) {
        return Draft.row(
                "total", starts.total(),
                "per_day", starts.perDay(),
                "most_in_a_day", starts.most(),
                "most_on", starts.mostOn());
    }
}
