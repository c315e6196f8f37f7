package org.warmvat.envelope;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.warmvat.design.envelope.Films;
import org.warmvat.design.envelope.OuterFace;

/** The outside film by hand (equation 2.4). */
class OuterFilmTest {
    private static final Films FILMS = new Films(100, 10, 6, 4, 4, 7.7, 10);

    /** 4 + 4 v: 3 m/s in the file, sheltered 0.4, gives 8.8 W/m2K. */
    @Test
    void convectionGrowsWithTheWindAtTheTank() {
        OuterFilm film = new OuterFilm(FILMS, new OuterFace(0.5, 0.9), 0.4, 1);
        assertEquals(4, film.convectionWPerM2K(0));
        assertEquals(8.8, film.convectionWPerM2K(3), 1e-12);
    }

    /** Black at 10 °C: 4 x 5.670374e-8 x 283.15^3 = 5.149 W/m2K; ISO 6946 (2017, annex C) prints 5.1 for 10 °C, from memory. */
    @Test
    void radiationIsThatOfThePublishedTable() {
        OuterFilm black = new OuterFilm(FILMS, new OuterFace(0.5, 1), 0.4, 1);
        assertEquals(5.1490, black.radiationWPerM2K(10), 5e-5);
        OuterFilm grey = new OuterFilm(FILMS, new OuterFace(0.5, 0.5), 0.4, 1);
        assertEquals(0.5 * black.radiationWPerM2K(-20), grey.radiationWPerM2K(-20), 1e-12);
    }

    private static double equivalentC(OuterFilm film, double airC, double skyC, double irradiance) {
        double hc = film.convectionWPerM2K(2);
        double hr = film.radiationWPerM2K(airC);
        return film.equivalentFluxWPerM2(hc, hr, airC, skyC, irradiance) / (hc + hr);
    }

    @Test
    void withoutSunAndColdSkyTheFaceMeetsTheAir() {
        OuterFilm film = new OuterFilm(FILMS, new OuterFace(0.5, 0.9), 0.7, 1);
        assertEquals(7, equivalentC(film, 7, 7, 0), 1e-12);
        OuterFilm roofed = new OuterFilm(FILMS, new OuterFace(0.5, 0.9), 0.25, 0);
        assertEquals(7, equivalentC(roofed, 7, -30, 0), 1e-12);
    }

    /** Upright faces see half the sky; the sun adds alpha I over both coefficients. */
    @Test
    void skyAndSunEnterByTheirShares() {
        OuterFilm upright = new OuterFilm(FILMS, new OuterFace(0.6, 0.9), 0.7, 0.5);
        double hc = 4 + 4 * 1.4;
        double hr = upright.radiationWPerM2K(5);
        double expected = (hc * 5 + hr * (0.5 * -15 + 0.5 * 5) + 0.6 * 400) / (hc + hr);
        assertEquals(expected, equivalentC(upright, 5, -15, 400), 1e-12);
    }
}
