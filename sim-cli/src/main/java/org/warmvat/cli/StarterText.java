package org.warmvat.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import org.warmvat.question.starter.Starter;
import org.warmvat.weather.Weather;

/** The starter design as a file whose comments state the rules. */
final class StarterText {

    private StarterText() {}

    /**
     * The design file.
     *
     * @param litres volume of slurry
     * @param setpointC set-point
     * @param weather the climate
     */
    static String of(double litres, double setpointC, Weather weather) {
        String site = weather.site().name().replaceAll("\\p{Cntrl}", " ");
        return Starter.of(litres, setpointC, weather).filled(template()).replace("{site}", site);
    }

    private static String template() {
        try (InputStream in = StarterText.class.getResourceAsStream("starter.yaml")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
