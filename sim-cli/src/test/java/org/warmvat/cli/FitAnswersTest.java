package org.warmvat.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

/** What {@code fit} answers where a log tells little, or something else than was asked. */
class FitAnswersTest extends FitRuns {

    /** Slurry and air taken for one another: the best factor is the least that is tried, and nobody should build on it. */
    @Test
    void aLogThatDoesNotGoWithTheDesignLeadsToNoDesign() throws IOException {
        List<String> swapped = rows(96, true, START).stream()
                .map(row -> row.split(","))
                .map(cells -> cells[0] + "," + cells[2] + "," + cells[1] + "," + cells[3] + ",0")
                .toList();
        JsonNode answer = fit(design, log("swapped.csv", swapped));
        assertEquals(
                "This log does not go with this design: nothing is found, and no design is written.",
                answer.path("verdict").path("sentence").asText());
        assertTrue(but(answer).contains("sensors taken for one another"), but(answer));
        assertFalse(Files.exists(folder.resolve("out/design_fitted.yaml")));
        JsonNode fit = answer.path("fit");
        for (JsonNode figure :
                List.of(fit.path("factors").path("envelope"), fit.path("ua_w_k"), fit.path("time_constant_h"))) {
            assertTrue(figure.path("low").isNull() && figure.path("high").isNull(), figure.toString());
        }
        assertTrue(fit.path("year").isNull());
    }

    @Test
    void whatOnlyAnotherExperimentTellsApartIsSaid() throws IOException {
        Path legs = Files.writeString(
                folder.resolve("legs.yaml"), Files.readString(design) + "fittings: [{name: legs, ua_w_k: 0.6}]\n");
        JsonNode answer = fit(legs, log("log.csv", rows(96, true, START)), "--factors", "envelope,fittings,capacity");
        assertEquals(
                "This log cannot tell apart what was asked for: envelope and fittings.",
                answer.path("verdict").path("sentence").asText());
        assertFalse(answer.path("fit").has("ratio"));
        String hints = answer.path("fit").path("hints").toString();
        assertTrue(hints.contains("with the fittings wrapped"), hints);
        assertFalse(hints.contains("A known heat"), hints);
    }

    @Test
    void aFitOfTheCapacityAloneSaysNothingOfTheLoss() throws IOException {
        JsonNode answer = fit(design, log("log.csv", rows(96, false, START)), "--factors", "capacity");
        String verdict = answer.path("verdict").path("sentence").asText();
        assertTrue(verdict.startsWith("With the loss as drawn (1.79 W/K): The contents hold 0."), verdict);
    }

    @Test
    void aRoomThatNobodyMeasuredIsThatOfTheDesign() throws IOException {
        Path indoors = Files.writeString(
                folder.resolve("indoors.yaml"),
                Files.readString(design)
                        .replace("liquid_depth_m: 1.2", "liquid_depth_m: 1.2, place: indoors, room_c: 4.5"));
        List<String[]> rows =
                rows(96, true, START).stream().map(row -> row.split(",")).toList();
        Path bare = log(
                "bare.csv",
                "time,slurry_c,backup_electric_w",
                rows.stream()
                        .map(cells -> cells[0] + "," + cells[1] + "," + cells[3])
                        .toList());
        Path measured = log(
                "measured.csv",
                "time,slurry_c,backup_electric_w,air_c",
                rows.stream()
                        .map(cells -> cells[0] + "," + cells[1] + "," + cells[3] + ",4.5")
                        .toList());
        JsonNode answer = fit(indoors, bare);
        assertEquals(uaWPerK(fit(indoors, measured)), uaWPerK(answer), 1e-9);
        assertTrue(answer.path("assumed").toString().contains("The room is as warm as the design says, 4.5"));
    }

    /** The air of two places is not warmest at the same time; no clock is wrong for that. */
    @Test
    void theAirOfAnotherPlaceIsNoWrongClock() throws IOException {
        StringBuilder weather = new StringBuilder(YearCommandTest.weatherText(0));
        LocalDateTime first = LocalDateTime.of(2025, 1, 1, 0, 0);
        for (int hour = 1; hour <= 24 * 12; hour++) {
            LocalDateTime later = first.plusHours(hour).plusMinutes(-40);
            weather.append(String.format(Locale.ROOT, "%s,%.2f,0\n", first.plusHours(hour), airC(later)));
        }
        Path file = Files.writeString(folder.resolve("weather.csv"), weather);
        String but = but(fit(design, log("log.csv", rows(120, true, START)), "--weather", file));
        assertFalse(but.contains("clock"), but);
    }
}
