package org.warmvat.checks;

import org.warmvat.design.envelope.Films;
import org.warmvat.design.envelope.OuterFace;
import org.warmvat.envelope.OuterFilm;

/**
 * Published: ISO 6946, annex on surface resistances: black-body radiative coefficients, inner and outer surface resistances,
 * outer resistance against wind. Conditions: emissivity 0.9 where a resistance is meant, air at 0 °C outside, 20 °C inside.
 * Provenance: from memory. Tolerance: half the last printed digit.
 */
class SurfaceResistanceIso6946Test implements Published {

    @Override
    public Source source() {
        return new Source(
                Topic.WALLS,
                "ISO 6946",
                "ISO 6946, Building components and building elements: thermal resistance and thermal transmittance; annex on"
                        + " surface resistances.",
                "Radiation at the air's temperature; emissivity 1 for the black-body row, else 0.9; wind at the face itself;"
                        + " inside convection 5.0 / 2.5 / 0.7 W/m2K up / level / down at 20 °C; outside 4 + 4 v at 0 °C.",
                Source.HALF_DIGIT);
    }

    private static OuterFilm film(double stillWPerM2K, double emissivity) {
        return new OuterFilm(new Films(100, 10, 6, stillWPerM2K, 4, 7.7, 10), new OuterFace(0, emissivity), 1, 0);
    }

    private static double resistance(OuterFilm film, double windMPerS, double airC) {
        return 1 / (film.convectionWPerM2K(windMPerS) + film.radiationWPerM2K(airC));
    }

    @Override
    public void fill(Sheet sheet) {
        Sheet.Table black = sheet.table(Provenance.MEMORY);
        double[][] radiation = {{-10, 4.1}, {0, 4.6}, {10, 5.1}, {20, 5.7}, {30, 6.3}};
        for (double[] row : radiation) {
            black.value(
                    "black-body coefficient at " + (int) row[0] + " °C, W/m2K",
                    row[1],
                    film(4, 1).radiationWPerM2K(row[0]),
                    0.05);
        }
        sheet.table(Provenance.MEMORY)
                .value("inner resistance, level, m2K/W", 0.13, resistance(film(2.5, 0.9), 0, 20), 0.005)
                .value("inner resistance, upward, m2K/W", 0.10, resistance(film(5.0, 0.9), 0, 20), 0.005)
                .value("inner resistance, downward, m2K/W", 0.17, resistance(film(0.7, 0.9), 0, 20), 0.005);
        Sheet.Table wind = sheet.table(Provenance.MEMORY);
        double[][] outer = {{1, 0.08}, {2, 0.06}, {3, 0.05}, {4, 0.04}, {5, 0.04}, {7, 0.03}, {10, 0.02}};
        for (double[] row : outer) {
            wind.value(
                    "outer resistance at " + (int) row[0] + " m/s, m2K/W",
                    row[1],
                    resistance(film(4, 0.9), row[0], 0),
                    0.005);
        }
    }
}
