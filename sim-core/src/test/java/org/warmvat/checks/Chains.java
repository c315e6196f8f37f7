package org.warmvat.checks;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.warmvat.design.envelope.EnvelopeRules;
import org.warmvat.design.envelope.Layer;
import org.warmvat.design.envelope.Material;
import org.warmvat.engine.SteadyStart;
import org.warmvat.envelope.LayerChain;
import org.warmvat.network.Chain;
import org.warmvat.network.Film;
import org.warmvat.network.Network;
import org.warmvat.network.State;

/** Layer chains between two fluids, solved by the program's own network. */
final class Chains {

    /** No merging of sheets, so that every layer stays one. */
    static final EnvelopeRules RULES = new EnvelopeRules(0.1, 3, 0.54, false, 0.5);

    /** The same with edges that pass nothing. */
    static EnvelopeRules withoutEdges() {
        return new EnvelopeRules(0.1, 3, 0, false, 0.5);
    }

    /** A film without resistance. */
    static final double NO_FILM = 1e12;

    private Chains() {}

    /** A layer of a conductivity, its heat capacity of no account. */
    static Layer layer(double thicknessM, double conductivityWPerMK) {
        return layer(thicknessM, conductivityWPerMK, 1000, 1000, 1);
    }

    /** A layer with everything. */
    static Layer layer(double thicknessM, double conductivityWPerMK, double densityKgPerM3, double heat, int nodes) {
        return new Layer(new Material("sample", conductivityWPerMK, densityKgPerM3, heat), thicknessM, nodes);
    }

    /** Plane layers of one square metre. */
    static LayerChain plane(Layer... layers) {
        return LayerChain.plane(List.of(layers), 1, RULES);
    }

    /** Layers round a bore, of a length. */
    static LayerChain pipe(double boreM, double lengthM, Layer... layers) {
        return LayerChain.cylinder(List.of(layers), boreM / 2, lengthM, RULES);
    }

    /** A chain with a film on each side, the inner fluid at its root. */
    record Wall(LayerChain chain, double innerFilmWPerM2K, double outerFilmWPerM2K) {

        /** Steady heat from inside to outside, W. */
        double watts(double insideC, double outsideC) {
            Network network = network(insideC, outsideC);
            State state = network.initialState();
            SteadyStart.settle(network, state, 0);
            return chain.innerWPerK(innerFilmWPerM2K)
                    * (insideC - state.nodeC(network.chains().get(0).first()));
        }

        /** Steady conductance, W/K. */
        double wattsPerK() {
            return watts(1, 0);
        }

        /** The chain as a network on a fluid that nothing cools. */
        Network network(double insideC, double outsideC) {
            Network.Assembly assembly = new Network.Assembly(1e15, insideC);
            int count = chain.slices().size();
            double[] capacity = new double[count];
            double[] link = new double[count];
            for (int i = 0; i < count; i++) {
                capacity[i] = chain.slices().get(i).capacityJPerK();
                link[i] = i == 0 ? chain.innerWPerK(innerFilmWPerM2K) : chain.betweenWPerK(i);
            }
            Chain.Face face = new Chain.Face(
                    chain.outerHalfKPerW(),
                    chain.outerAreaM2(),
                    new Film(outerFilmWPerM2K),
                    assembly.known("outside", outsideC),
                    Network.UNMETERED);
            assembly.chain("layer", Network.SLURRY, capacity, link, face, outsideC);
            return assembly.build();
        }
    }

    /** Where a rising or falling function meets a value. */
    static double solve(DoubleUnaryOperator function, double value, double least, double most) {
        return new BrentSolver(1e-13, 1e-12).solve(1000, x -> function.applyAsDouble(x) - value, least, most);
    }
}
