package org.warmvat.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import org.warmvat.question.starter.Starter;
import org.warmvat.weather.Weather;

/** The starter design as a file whose comments state the rules. */
final class StarterText {

    private static final String TUBES = """
              # Evacuated tubes: less through the glass than a flat plate, less lost (common practice, no source; take its certificate's).
              eta0: 0.62
              a1_w_m2k: 1.4
              a2_w_m2k2: 0.006
            """;
    private static final String TUNNEL = """
            # A small tunnel of one skin: measure yours.
            shelter: {kind: polytunnel_single, floor_area_m2: 16, cover_area_m2: 42, volume_m3: 32}
            """;
    private static final String REST = """
            # Unfed in winter and kept from freezing only; the mixer turns now and then.
            calendar:
              - {name: winter rest, from: "{rest_from}", to: "{rest_to}", setpoint_c: 8, feed_factor: 0, floor: none, mixer_minutes_per_hour: 5}
            """;

    private StarterText() {}

    /**
     * The design file.
     *
     * @param litres volume of slurry
     * @param setpointC set-point
     * @param weather the climate
     * @param atHand what is at hand in place of some of the rules
     */
    static String of(double litres, double setpointC, Weather weather, Starter.AtHand atHand) {
        String site = weather.site().name().replaceAll("\\p{Cntrl}", " ");
        Starter starter = Starter.of(litres, setpointC, weather, atHand);
        String text = template();
        if (!starter.hasCollector()) {
            text = text.replaceFirst("(?ms)^solar:\n.*?(?=^backup:)", "");
        } else if (atHand.collector() == Starter.CollectorKind.TUBES) {
            text = text.replaceFirst("(?m)^  loop_kg_s: \\{solar_loop}", TUBES + "$0");
        }
        if (atHand.insulationMm().isPresent()) {
            text = text.replaceFirst("(?ms)^  # Foam in mm = .*?(?=^  shell:)", "  # Insulation as it is at hand.\n");
        }
        text += atHand.standing() == Starter.Standing.POLYTUNNEL ? TUNNEL : "";
        text += atHand.winterRest() ? REST : "";
        return starter.filled(text).replace("{site}", site);
    }

    private static String template() {
        try (InputStream in = StarterText.class.getResourceAsStream("starter.yaml")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
