package org.warmvat.cli.answer;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.time.YearMonth;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.warmvat.account.Period;
import org.warmvat.design.BackupCircuit;
import org.warmvat.network.Warning;
import org.warmvat.question.year.YearResult;
import org.warmvat.tank.Money;

/** Writes {@code summary.json}: every figure of the report, numbers with all their digits. */
final class SummaryJson {

    private final JsonGenerator json;

    private SummaryJson(JsonGenerator json) {
        this.json = json;
    }

    static byte[] of(YearResult run, Findings findings, Origin origin) {
        return Json.bytes(json -> new SummaryJson(json).write(run, findings, origin));
    }

    private void write(YearResult run, Findings findings, Origin origin) throws IOException {
        json.writeStartObject();
        origin(origin);
        run(run);
        sentences(run, findings);
        strings("assumed", run.assumed());
        json.writeObjectFieldStart("year");
        figures(run.whole());
        json.writeEndObject();
        money(run);
        if (findings.payback().isPresent()) {
            Json.value(json, "payback", findings.payback().get().figures());
        }
        months(run.months());
        seasons(findings.seasons());
        extremes(findings);
        warnings(run.warnings());
        strings("cautions", Cautions.of(java.util.Optional.empty()));
        json.writeEndObject();
    }

    private void origin(Origin origin) throws IOException {
        json.writeObjectFieldStart("program");
        json.writeStringField("name", "warmvat");
        json.writeStringField("version", origin.version());
        json.writeEndObject();
        json.writeArrayFieldStart("inputs");
        for (InputFile input : origin.inputs()) {
            json.writeStartObject();
            json.writeStringField("role", input.role());
            json.writeStringField("file", input.file());
            json.writeStringField("sha256", input.sha256());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private void run(YearResult run) throws IOException {
        json.writeStringField("title", run.design().title());
        json.writeStringField("site", run.site().name());
        json.writeNumberField("latitude_deg", run.site().latitudeDeg());
        json.writeStringField("engine", run.engine());
        json.writeNumberField("run_in_days", run.runInDays());
        json.writeStringField("first_hour_start", run.hourly().start().toString());
        json.writeNumberField("setpoint_c", run.design().control().setpointC());
        json.writeNumberField("floor_c", run.design().control().minimumC());
        json.writeNumberField("liquid_volume_m3", run.design().tank().liquidVolumeM3());
        json.writeBooleanField("solar_circuit", run.design().solar().isPresent());
        json.writeFieldName("backup_source");
        json.writeString(run.design().backup().map(SummaryJson::source).orElse(null));
        json.writeBooleanField("gas_computed", run.design().gas().isPresent());
        json.writeNumberField("primary_energy_factor", run.design().prices().primaryEnergyFactor());
    }

    private static String source(BackupCircuit backup) {
        return switch (backup.source()) {
            case ELECTRIC -> "electric";
            case OWN_GAS -> "own_gas";
            case FUEL -> "fuel";
        };
    }

    private void sentences(YearResult run, Findings findings) throws IOException {
        json.writeArrayFieldStart("answer");
        for (Paragraph paragraph : Answer.of(run, findings)) {
            for (String sentence : paragraph.sentences()) {
                json.writeString(sentence);
            }
        }
        json.writeEndArray();
    }

    private void money(YearResult run) throws IOException {
        Money money = Money.of(run.design(), run.whole());
        json.writeObjectFieldStart("money");
        json.writeStringField("currency", run.design().prices().currency());
        number("backup_cost", money.backupCost());
        number("electricity_cost", money.electricityCost());
        number("gas_worth", money.gasWorth());
        number("balance", money.balance());
        number("co2_kg", money.co2Kg());
        json.writeEndObject();
    }

    private void months(List<Period> months) throws IOException {
        json.writeArrayFieldStart("months");
        for (Period month : months) {
            json.writeStartObject();
            json.writeStringField("month", month.label());
            figures(month);
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private void figures(Period period) throws IOException {
        for (Map.Entry<String, Object> figure : period.figures().entrySet()) {
            Json.value(json, figure.getKey(), figure.getValue());
        }
    }

    private void number(String key, OptionalDouble value) throws IOException {
        Json.number(json, key, value);
    }

    private void number(String key, double value) throws IOException {
        Json.number(json, key, OptionalDouble.of(value));
    }

    private void seasons(List<Season> seasons) throws IOException {
        json.writeArrayFieldStart("seasons");
        for (Season season : seasons) {
            json.writeStartObject();
            json.writeStringField("season", season.name());
            strings("months", season.months().stream().map(YearMonth::toString).toList());
            number("solar_heat_kwh", season.solarKWh());
            number("backup_heat_kwh", season.backupKWh());
            number("solar_share", season.solarShare());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private void extremes(Findings findings) throws IOException {
        json.writeStringField("coldest_day", findings.coldestDay().toString());
        json.writeStringField("warmest_day", findings.warmestDay().toString());
        json.writeFieldName("worst_week");
        if (findings.worstWeek().isPresent()) {
            worstWeek(findings.worstWeek().get());
        } else {
            json.writeNull();
        }
        json.writeObjectFieldStart("starts");
        starts("solar_pump", findings.solarPump());
        starts("backup", findings.backup());
        json.writeEndObject();
    }

    private void worstWeek(WorstWeek week) throws IOException {
        json.writeStartObject();
        json.writeStringField("first_day", week.firstDay().toString());
        json.writeStringField("last_day", week.lastDay().toString());
        json.writeStringField("chosen_by", week.mark().words());
        number("hours_below_floor", week.belowFloorHours());
        number("solar_heat_kwh", week.solarKWh());
        number("backup_heat_kwh", week.backupKWh());
        json.writeObjectFieldStart("slurry_c");
        number("least", week.leastC());
        number("mean", week.meanC());
        json.writeEndObject();
        json.writeEndObject();
    }

    private void starts(String key, Optional<Starts> starts) throws IOException {
        if (starts.isEmpty()) {
            json.writeNullField(key);
            return;
        }
        json.writeObjectFieldStart(key);
        json.writeNumberField("total", starts.get().total());
        number("per_day", starts.get().perDay());
        json.writeNumberField("most_in_a_day", starts.get().most());
        json.writeStringField("most_on", starts.get().mostOn());
        json.writeEndObject();
    }

    private void warnings(List<Warning> warnings) throws IOException {
        strings("warnings", warnings.stream().map(Warning::sentence).toList());
        json.writeArrayFieldStart("warning_figures");
        for (Warning warning : warnings) {
            json.writeStartObject();
            json.writeStringField("kind", warning.key());
            number("count", warning.count());
            number("worst", warning.worst());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private void strings(String key, List<String> values) throws IOException {
        json.writeArrayFieldStart(key);
        for (String value : values) {
            json.writeString(value);
        }
        json.writeEndArray();
    }
}
