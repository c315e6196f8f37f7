package org.warmvat.cli.answer.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.warmvat.cli.answer.Document;
import org.warmvat.cli.answer.Draft;
import org.warmvat.cli.answer.Subject;
import org.warmvat.cli.words.Words;
import org.warmvat.design.Design;
import org.warmvat.design.surroundings.Place;
import org.warmvat.gas.GasEnergy;
import org.warmvat.network.meter.Unit;
import org.warmvat.tank.Conductances;
import org.warmvat.tank.DerivedFigures;

/** The answer to {@code check}: what can be said of a design without running it. */
public final class CheckAnswer {

    private final Design design;
    private final double windMPerS;
    private final DerivedFigures figures;

    private CheckAnswer(Design design, double windMPerS, DerivedFigures figures) {
        this.design = design;
        this.windMPerS = windMPerS;
        this.figures = figures;
    }

    /**
     * Tells what follows from a design.
     *
     * @param asked the design, with or without weather
     * @param windMPerS mean wind at 10 m that the figures are for
     * @param figures the figures
     */
    public static Document of(Subject asked, double windMPerS, DerivedFigures figures) {
        return new CheckAnswer(asked.design(), windMPerS, figures).told(asked);
    }

    /** Where the heat goes on the cold day: a room stays as warm as it is. */
    private String inTheCold() {
        return design.tank().place() instanceof Place.Indoors indoors
                ? "in a room of " + Words.celsius(indoors.roomC())
                : "in air of " + Words.celsius(figures.coldC());
    }

    private Document told(Subject asked) {
        Draft draft = Draft.of(asked, "what follows from the design")
                .verdict("The inputs have no faults.", List.of())
                .key("Heat loss", Words.number(figures.coldLossW()) + " W " + inTheCold())
                .key("Time constant", Words.number(figures.timeConstantH() / 24) + " days")
                .key(
                        "Retention",
                        Double.isInfinite(figures.retentionDays())
                                ? "for ever: nothing is fed"
                                : Words.number(figures.retentionDays()) + " days");
        if (design.gas().isPresent()) {
            draft.key("Methane", "about " + Words.number(figures.methaneNm3PerDay()) + " Nm³ a day");
        }
        return draft.paragraph("Heat loss", loss())
                .paragraph("Coils", coils())
                .paragraph("Feed and gas", feedAndGas())
                .figure("wind_m_s", windMPerS)
                .figure("ua_w_k", conductances())
                .figure("time_constant_h", figures.timeConstantH())
                .figure("setpoint_c", design.control().setpointC())
                .figure("cold_air_c", figures.coldC())
                .figure("cold_loss_w", figures.coldLossW())
                .figure("cold_feed_w", figures.coldFeedW())
                .figure("solar_coil_w_k", DerivedFigures.solarCoilWPerK(design))
                .figure("backup_coil_most_w", DerivedFigures.backupCoilMostW(design))
                .figure("retention_days", figures.retentionDays())
                .figure("loading_kg_vs_m3_day", figures.loadingKgVsPerM3Day())
                .figure("methane_nm3_day", design.gas().map(gas -> figures.methaneNm3PerDay()))
                .done();
    }

    private String where() {
        return design.tank().place() instanceof Place.Indoors room
                ? "In a room of " + Words.celsius(room.roomC())
                : "In a mean wind of " + Words.number(windMPerS) + " m/s";
    }

    private List<String> loss() {
        Conductances ua = figures.conductances();
        return List.of(
                where() + " the tank loses " + Words.number(ua.totalWPerK()) + " W for each kelvin: wall "
                        + Words.number(ua.wallWPerK()) + ", dry wall " + Words.number(ua.dryWallWPerK()) + ", lid "
                        + Words.number(ua.lidWPerK()) + ", base " + Words.number(ua.floorWPerK()) + ", edges "
                        + Words.number(ua.edgesWPerK()) + ", fittings " + Words.number(ua.fittingsWPerK()) + " W/K.",
                "Its time constant is " + Words.number(figures.timeConstantH()) + " hours ("
                        + Words.number(figures.timeConstantH() / 24) + " days).",
                "At the set-point of " + Words.celsius(design.control().setpointC()) + " " + inTheCold() + " it loses "
                        + Words.number(figures.coldLossW())
                        + " W, and warming the feed takes another " + Words.number(figures.coldFeedW())
                        + " W on average.");
    }

    private List<String> coils() {
        List<String> coils = new ArrayList<>();
        DerivedFigures.solarCoilWPerK(design)
                .ifPresent(wPerK -> coils.add("The solar coil passes " + Words.number(wPerK)
                        + " W for each kelvin between circuit and slurry."));
        DerivedFigures.backupCoilMostW(design)
                .ifPresent(watts -> coils.add("The backup coil passes " + Words.number(watts)
                        + " W at most, at the set-point and its flow limit."));
        return coils.isEmpty() ? List.of("There is no coil.") : coils;
    }

    private List<String> feedAndGas() {
        String stays = Double.isFinite(figures.retentionDays())
                ? "The hydraulic retention time is " + Words.number(figures.retentionDays())
                        + " days; the organic loading rate is " + Words.number(figures.loadingKgVsPerM3Day())
                        + " kg of volatile solids per cubic metre and day."
                : "Nothing is fed, so that the slurry stays for ever.";
        return List.of(
                stays,
                design.gas().isPresent()
                        ? "At steady state and set-point it makes about " + Words.number(figures.methaneNm3PerDay())
                                + " Nm³ of methane a day, which holds about "
                                + Words.kWh(Unit.KWH.of(figures.methaneNm3PerDay() * GasEnergy.METHANE_J_PER_NM3)) + "."
                        : "No gas is computed for this design.");
    }

    private Map<String, Object> conductances() {
        Conductances ua = figures.conductances();
        return Draft.row(
                "wall", ua.wallWPerK(),
                "dry_wall", ua.dryWallWPerK(),
                "lid", ua.lidWPerK(),
                "floor", ua.floorWPerK(),
                "edges", ua.edgesWPerK(),
                "fittings", ua.fittingsWPerK(),
                "total", ua.totalWPerK());
    }
}
