package org.warmvat.cli.answer;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.warmvat.cli.file.DesignDocument;

class TankPictureTest {

    /** What was simulated, in words: every number stands in the built-in design. */
    @Test
    void theDemonstrationInWords() {
        assertEquals(
                "The tank, cut open, to scale. slurry: 903 litres, 1.00 m across inside, 1.15 m deep, kept at 36.0 °C; gas space:"
                        + " 196 litres, 0.25 m high; wall: 2 mm stainless steel, 90 mm PIR foam, 0.8 mm aluminium sheet; lid: 2 mm"
                        + " stainless steel, 110 mm PIR foam, 0.8 mm aluminium sheet; base: 3 mm stainless steel, 90 mm PIR foam,"
                        + " 0.8 mm aluminium sheet; on legs; solar coil: 1 m²; backup heater: 500 W, through a coil of 0.8 m²;"
                        + " paddle: 8.09 W, 60 minutes an hour; feed auger: 20 kg a day, water included; outlet: 110 mm bore; gas"
                        + " neck; collector: 2 m², tilted 60°.",
                TankPicture.of(DesignDocument.demonstration().design()).alternative());
    }
}
