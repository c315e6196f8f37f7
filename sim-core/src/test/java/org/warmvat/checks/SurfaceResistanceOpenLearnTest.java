package org.warmvat.checks;

import org.warmvat.design.envelope.Films;
import org.warmvat.design.envelope.OuterFace;
import org.warmvat.envelope.OuterFilm;

/**
 * Published: The Open University, OpenLearn "Energy in buildings", section 2.2.6, outer surface resistance 0.04 m2K/W. Seen.
 * Conditions: the standard's wind of 4 m/s, emissivity 0.9, 0 °C. Tolerance: half the last printed digit.
 */
class SurfaceResistanceOpenLearnTest implements Published {

    @Override
    public Source source() {
        return new Source(
                Topic.WALLS,
                "OpenLearn",
                "The Open University, OpenLearn, \"Energy in buildings\", section 2.2.6,"
                        + " https://www.open.edu/openlearn/nature-environment/energy-buildings/content-section-2.2.6",
                "Wind 4 m/s at the face, emissivity 0.9, 0 °C.",
                Source.HALF_DIGIT);
    }

    @Override
    public void fill(Sheet sheet) {
        OuterFilm film = new OuterFilm(new Films(100, 10, 6, 4, 4, 7.7, 10), new OuterFace(0, 0.9), 1, 0);
        double resistance = 1 / (film.convectionWPerM2K(4) + film.radiationWPerM2K(0));
        sheet.table(Provenance.SEEN).value("outer surface resistance, m2K/W", 0.04, resistance, 0.005);
    }
}
