package org.warmvat.cli.answer;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.time.YearMonth;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.warmvat.result.BoughtEnergy;
import org.warmvat.result.Marks;
import org.warmvat.result.Money;
import org.warmvat.result.Period;
import org.warmvat.result.RunResult;
import org.warmvat.result.Warning;

/** Writes {@code summary.json}: every figure of the report, numbers with all their digits. */
final class SummaryJson {

    private final JsonGenerator json;

    private SummaryJson(JsonGenerator json) {
        this.json = json;
    }

    static byte[] of(RunResult run, Findings findings, Origin origin) {
        return Json.bytes(json -> new SummaryJson(json).write(run, findings, origin));
    }

    private void write(RunResult run, Findings findings, Origin origin) throws IOException {
        json.writeStartObject();
        origin(origin);
        run(run);
        sentences(run, findings);
        strings("assumed", run.assumed());
        json.writeObjectFieldStart("year");
        figures(run.year());
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

    private void run(RunResult run) throws IOException {
        Marks marks = run.marks();
        json.writeStringField("title", run.title());
        json.writeStringField("site", run.location().site());
        json.writeNumberField("latitude_deg", run.location().latitudeDeg());
        json.writeStringField("engine", run.engine());
        json.writeNumberField("run_in_days", run.runInDays());
        json.writeStringField("first_hour_start", run.hourly().firstHourStart().toString());
        json.writeNumberField("setpoint_c", marks.setpointC());
        json.writeNumberField("floor_c", marks.floorC());
        json.writeNumberField("liquid_volume_m3", marks.liquidVolumeM3());
        json.writeBooleanField("solar_circuit", marks.hasSolar());
        json.writeFieldName("backup_source");
        json.writeString(marks.backup().map(SummaryJson::source).orElse(null));
        json.writeBooleanField("gas_computed", marks.hasGas());
        json.writeNumberField("primary_energy_factor", marks.primaryEnergyFactor());
    }

    private static String source(BoughtEnergy energy) {
        return switch (energy) {
            case ELECTRICITY -> "electric";
            case OWN_GAS -> "own_gas";
            case FUEL -> "fuel";
        };
    }

    private void sentences(RunResult run, Findings findings) throws IOException {
        json.writeArrayFieldStart("answer");
        for (Paragraph paragraph : Answer.of(run, findings)) {
            for (String sentence : paragraph.sentences()) {
                json.writeString(sentence);
            }
        }
        json.writeEndArray();
    }

    private void money(RunResult run) throws IOException {
        Money money = Money.of(run.year(), run.marks().backup(), run.marks().tariff());
        json.writeObjectFieldStart("money");
        json.writeStringField("currency", run.marks().tariff().currency());
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

    /** Writes a period's figures, opening and closing the objects of groups as they come and go. */
    private void figures(Period period) throws IOException {
        String open = "";
        for (Figure figure : Figures.ALL) {
            if (!figure.group().equals(open)) {
                if (!open.isEmpty()) {
                    json.writeEndObject();
                }
                open = figure.group();
                if (!open.isEmpty()) {
                    json.writeObjectFieldStart(open);
                }
            }
            number(figure.key(), figure.value().apply(period));
        }
        if (!open.isEmpty()) {
            json.writeEndObject();
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
            json.writeStringField("kind", warning.kind());
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
