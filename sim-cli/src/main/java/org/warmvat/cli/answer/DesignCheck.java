package org.warmvat.cli.answer;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.warmvat.design.Design;
import org.warmvat.tank.Conductances;
import org.warmvat.tank.DerivedFigures;

/**
 * What can be said of a design without running it, in sentences and as JSON.
 *
 * @param design the design
 * @param windMPerS mean wind at 10 m that the figures are for
 * @param figures the figures
 * @param notes defaults used, doubts about the inputs, what was assumed of the weather
 */
public record DesignCheck(Design design, double windMPerS, DerivedFigures figures, List<String> notes) {

    private static final double METHANE_KWH_PER_NM3 = 35.8 / 3.6;

    /** The figures in sentences. */
    public List<Paragraph> paragraphs() {
        return List.of(
                new Paragraph("Heat loss", loss()),
                new Paragraph("Coils", coils()),
                new Paragraph("Feed and gas", feedAndGas()),
                new Paragraph("Defaults used, and what deserves a look", notes.isEmpty() ? List.of("None.") : notes));
    }

    private List<String> loss() {
        Conductances ua = figures.conductances();
        return List.of(
                "In a mean wind of " + Words.fixed(windMPerS, 1) + " m/s the tank loses "
                        + Words.number(ua.totalWPerK()) + " W for each kelvin: wall " + Words.number(ua.wallWPerK())
                        + ", dry wall " + Words.number(ua.dryWallWPerK()) + ", lid " + Words.number(ua.lidWPerK())
                        + ", floor " + Words.number(ua.floorWPerK()) + ", edges " + Words.number(ua.edgesWPerK())
                        + ", fittings " + Words.number(ua.fittingsWPerK()) + " W/K.",
                "Its time constant is " + Words.number(figures.timeConstantH()) + " hours ("
                        + Words.number(figures.timeConstantH() / 24) + " days).",
                "At the set-point of " + Words.celsius(design.control().setpointC()) + " in air of "
                        + Words.celsius(figures.coldC()) + " it loses " + Words.number(figures.coldLossW())
                        + " W, and warming the feed takes another " + Words.number(figures.coldFeedW())
                        + " W on average.");
    }

    private List<String> coils() {
        List<String> coils = new ArrayList<>();
        solarCoil()
                .ifPresent(wPerK -> coils.add("The solar coil passes " + Words.number(wPerK)
                        + " W for each kelvin between circuit and slurry."));
        backupCoil()
                .ifPresent(watts -> coils.add("The backup coil passes " + Words.number(watts)
                        + " W at most, at the set-point and its flow limit."));
        return coils.isEmpty() ? List.of("There is no coil.") : coils;
    }

    private List<String> feedAndGas() {
        List<String> sentences = new ArrayList<>();
        sentences.add("The slurry stays " + Words.number(figures.retentionDays()) + " days; each cubic metre is fed "
                + Words.number(figures.loadingKgVsPerM3Day()) + " kg of volatile solids a day.");
        sentences.add(
                design.gas().isPresent()
                        ? "At steady state and set-point it makes " + Words.number(figures.methaneNm3PerDay())
                                + " Nm³ of methane a day, which holds "
                                + Words.kWh(figures.methaneNm3PerDay() * METHANE_KWH_PER_NM3) + "."
                        : "No gas is computed for this design.");
        return sentences;
    }

    private Optional<Double> solarCoil() {
        return DerivedFigures.solarCoilWPerK(design);
    }

    private Optional<Double> backupCoil() {
        return DerivedFigures.backupCoilMostW(design);
    }

    /** The same as JSON. */
    public byte[] json() {
        return Json.bytes(this::write);
    }

    private void write(JsonGenerator json) throws IOException {
        json.writeStartObject();
        json.writeStringField("title", design.title());
        number(json, "wind_m_s", windMPerS);
        json.writeObjectFieldStart("ua_w_k");
        conductances(json, figures.conductances());
        json.writeEndObject();
        number(json, "time_constant_h", figures.timeConstantH());
        number(json, "setpoint_c", design.control().setpointC());
        number(json, "cold_air_c", figures.coldC());
        number(json, "cold_loss_w", figures.coldLossW());
        number(json, "cold_feed_w", figures.coldFeedW());
        Json.number(json, "solar_coil_w_k", optional(solarCoil()));
        Json.number(json, "backup_coil_most_w", optional(backupCoil()));
        number(json, "retention_days", figures.retentionDays());
        number(json, "loading_kg_vs_m3_day", figures.loadingKgVsPerM3Day());
        Json.number(
                json,
                "methane_nm3_day",
                design.gas().isPresent() ? OptionalDouble.of(figures.methaneNm3PerDay()) : OptionalDouble.empty());
        json.writeArrayFieldStart("notes");
        for (String note : notes) {
            json.writeString(note);
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private static void conductances(JsonGenerator json, Conductances ua) throws IOException {
        number(json, "wall", ua.wallWPerK());
        number(json, "dry_wall", ua.dryWallWPerK());
        number(json, "lid", ua.lidWPerK());
        number(json, "floor", ua.floorWPerK());
        number(json, "edges", ua.edgesWPerK());
        number(json, "fittings", ua.fittingsWPerK());
        number(json, "total", ua.totalWPerK());
    }

    private static void number(JsonGenerator json, String key, double value) throws IOException {
        Json.number(json, key, OptionalDouble.of(value));
    }

    private static OptionalDouble optional(Optional<Double> value) {
        return value.map(OptionalDouble::of).orElseGet(OptionalDouble::empty);
    }
}
