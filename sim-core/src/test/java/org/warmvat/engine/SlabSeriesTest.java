package org.warmvat.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.warmvat.design.envelope.EnvelopeRules;
import org.warmvat.design.envelope.Layer;
import org.warmvat.design.envelope.Material;
import org.warmvat.envelope.LayerChain;
import org.warmvat.network.Chain;
import org.warmvat.network.Film;
import org.warmvat.network.Network;
import org.warmvat.network.State;

/**
 * A plane layer, adiabatic inside, that cools through a film outside: the chain of sub-nodes against the series
 * {@code sum A_n cos(z_n x/L) exp(-z_n^2 Fo)}, {@code z tan z = Bi}, {@code A = 4 sin z/(2 z + sin 2 z)}.
 */
class SlabSeriesTest {
    /** Half a metre of something earthy: Fo 0.2 after 10 h. */
    private static final double THICKNESS_M = 0.3;

    private static final double CONDUCTIVITY = 0.5;
    private static final Material EARTH =
            new Material("earth", CONDUCTIVITY, 1000, CONDUCTIVITY * 36_000 / (0.2 * THICKNESS_M * THICKNESS_M * 1000));
    private static final EnvelopeRules RULES = new EnvelopeRules(0.1, 3, 0.54, false, 0.5);
    private static final double FILM = CONDUCTIVITY / THICKNESS_M;

    /** The first roots at Bi 1 are those of the textbooks' tables, 0.8603 with coefficient 1.1191. */
    @Test
    void theRootIsTheTextbooks() {
        assertEquals(0.8603, root(0), 5e-5);
        assertEquals(1.1191, coefficient(root(0)), 5e-5);
    }

    @Test
    void meanTemperatureConvergesWithTheSquareOfTheSlices() {
        double coarse = Math.abs(meanC(Engines.REFERENCE, 4) - seriesMean());
        double middle = Math.abs(meanC(Engines.REFERENCE, 8) - seriesMean());
        double fine = Math.abs(meanC(Engines.REFERENCE, 16) - seriesMean());
        assertEquals(4, coarse / middle, 0.2);
        assertEquals(4, middle / fine, 0.1);
        assertTrue(fine < 0.01 * 40, "fine " + fine);
    }

    @ParameterizedTest
    @EnumSource
    void fiftySlicesStandOnTheSeries(Engines engine) {
        // second order from the ratios above: 16 slices to 50 divide the error by ten
        assertEquals(seriesMean(), meanC(engine, 50), 0.005);
    }

    private static double meanC(Engines engine, int slices) {
        LayerChain chain = LayerChain.plane(List.of(new Layer(EARTH, THICKNESS_M, slices)), 2, RULES);
        double[] capacity = new double[slices - 1];
        double[] link = new double[slices - 1];
        for (int i = 1; i < slices; i++) {
            capacity[i - 1] = chain.slices().get(i).capacityJPerK();
            link[i - 1] = chain.betweenWPerK(i);
        }
        Network.Assembly assembly = new Network.Assembly(chain.slices().get(0).capacityJPerK(), 40);
        Chain.Face face = new Chain.Face(
                chain.outerHalfKPerW(),
                chain.outerAreaM2(),
                new Film(FILM),
                assembly.known("fluid", 0),
                Network.UNMETERED);
        int first = assembly.chain("slice", 0, capacity, link, face, 40).first();
        State end = engine.run(assembly.build(), 10);
        double sum = end.nodeC(0);
        for (int i = 1; i < slices; i++) {
            sum += end.nodeC(first + i - 1);
        }
        return sum / slices;
    }

    private static double seriesMean() {
        double sum = 0;
        for (int n = 0; n < 20; n++) {
            double z = root(n);
            sum += coefficient(z) * Math.sin(z) / z * Math.exp(-z * z * 0.2);
        }
        return 40 * sum;
    }

    private static double coefficient(double z) {
        return 4 * Math.sin(z) / (2 * z + Math.sin(2 * z));
    }

    /** Root of {@code z tan z = 1} by halving between n pi and (n + 1/2) pi. */
    private static double root(int n) {
        double low = n * Math.PI;
        double high = (n + 0.5) * Math.PI;
        for (int i = 0; i < 100; i++) {
            double middle = 0.5 * (low + high);
            if (middle * Math.tan(middle) < 1) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }
}
