package org.warmvat.network;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDateTime;
import org.junit.jupiter.api.Test;
import org.warmvat.sample.InventedWeather;
import org.warmvat.weather.Weather;

/** The clock and what a part sees outside. */
class SurroundingsTest {

    @Test
    void theClockGoesOnFromTheFilesFirstHour() {
        Weather evening = InventedWeather.steadyFrom(LocalDateTime.of(2025, 3, 3, 22, 0), 4, 48);
        Surroundings surroundings = new Surroundings(evening, timeS -> 9, new Network.Assembly(1, 0));
        assertEquals(22 * 3600, surroundings.secondOfDay(0));
        assertEquals(0, surroundings.secondOfDay(2 * 3600));
        assertEquals(86_399.5, surroundings.secondOfDay(2 * 3600 - 0.5));
        assertEquals(6 * 3600, surroundings.secondOfDay((2 + 6 + 24) * 3600));
    }

    @Test
    void airFollowsTheLinesBetweenStamps() {
        Weather weather = InventedWeather.varying(5, hour -> 2 * hour);
        Network.Assembly assembly = new Network.Assembly(1, 0);
        Surroundings surroundings = new Surroundings(weather, timeS -> timeS / 3600, assembly);
        int air = surroundings.air();
        int ground = surroundings.ground();
        Network network = assembly.build();
        State state = network.initialState();
        // stamps at the hours' ends: 0 °C at 1 h, 2 °C at 2 h
        network.look(1.5 * 3600, state);
        assertEquals(1, state.nodeC(air), 1e-12);
        network.look(5 * 3600, state);
        assertEquals(8, state.nodeC(air), 1e-12);
        network.look(3 * 3600, state);
        assertEquals(3, state.nodeC(ground), 1e-12);
        assertEquals(0, surroundings.windMPerS(100));
        assertEquals(weather, surroundings.weather());
    }

    @Test
    void theMiddleOfAnIntervalIsInside() {
        assertEquals(7250, new Interval(7200, 7300, 2).middleS());
    }
}
