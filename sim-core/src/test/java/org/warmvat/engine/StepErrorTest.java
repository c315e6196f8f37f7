package org.warmvat.engine;

import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.warmvat.network.Flows;
import org.warmvat.network.Network;
import org.warmvat.network.Part;
import org.warmvat.network.State;

/**
 * A step's own word on its error, against the same hour in many short steps: on tanks that are wrong in one way each, it may not be
 * taken for much better than it is.
 */
class StepErrorTest {

    private static final double STEP_S = 3600;
    private static final int SHORT_STEPS = 96;

    /** Error allowed at the slurry, K. */
    private static final double ALLOWED_K = 3e-6;

    /** The error may be this many times what the step says. */
    private static final double MOST_TIMES = 2.5;

    /** Each tank is wrong by at least this, K, or it would show nothing. */
    private static final double LEAST_K = 3e-5;

    private static final double SLURRY_J_PER_K = 1e6;

    private static Network.Assembly slurry() {
        Network.Assembly assembly = new Network.Assembly();
        assembly.node(new Network.Node("slurry", SLURRY_J_PER_K, -1, 36, false));
        return assembly;
    }

    private static Network circuit(double capacityJPerK, double linkWPerK, double startC, Part heat) {
        Network.Assembly assembly = slurry();
        assembly.node(new Network.Node("circuit", capacityJPerK, 0, startC, false));
        assembly.part((timeS, state, flows) -> flows.link(1, linkWPerK, Flows.UNMETERED));
        assembly.part(heat);
        return assembly.build();
    }

    /** Tanks, each wrong in one way. */
    private enum Tank {
        /** Air that cools within a minute or two, which no parabola follows. */
        CHANGE {
            @Override
            Network network() {
                Network.Assembly assembly = slurry();
                assembly.node(new Network.Node("layer", 3e4, 0, 20, true, 20));
                assembly.slowPart(
                        (timeS, flows) -> flows.exchange(1, 4, 40 * Math.exp(-timeS / 60) - 20, Flows.UNMETERED));
                return assembly.build();
            }
        },
        /** A loss that begins at 45 °C, on the way from below it to above. */
        CORNER {
            @Override
            Network network() {
                return circuit(500, 20, 36, (timeS, state, flows) -> {
                    double aboveK = Math.max(0, state.nodeC(1) - 45);
                    flows.heat(1, 500 - 20 * aboveK, aboveK > 0 ? -20 : 0, 0, Flows.UNMETERED);
                });
            }
        },
        /** A loss with a square, from a circuit that cools within minutes. */
        BEND {
            @Override
            Network network() {
                return circuit(5000, 60, 60, (timeS, state, flows) -> {
                    double celsius = state.nodeC(1);
                    flows.heat(1, -0.5 * celsius * Math.abs(celsius), -Math.abs(celsius), -1, Flows.UNMETERED);
                });
            }
        },
        /** A layer out of balance, on its way throughout the step, whose conductance is far from the one held. */
        REST {
            @Override
            Network network() {
                Network.Assembly assembly = slurry();
                assembly.node(new Network.Node("layer", 3e4, 0, -30, true, 20));
                assembly.slowPart((timeS, flows) -> flows.exchange(1, 7.9, 0, Flows.UNMETERED));
                return assembly.build();
            }
        };

        abstract Network network();

        /** What an error of 1 stands for at the slurry, K: twice as much where only what is outside changes. */
        double allowedK() {
            return this == CHANGE ? 2 * ALLOWED_K : ALLOWED_K;
        }
    }

    /** The slurry after an hour, and the error of the last step over what is allowed. */
    private record Hour(double slurryC, double error) {}

    private static Hour hour(Network network, int steps) {
        State state = network.initialState();
        int[] fed = {0, 1};
        ModalStep step = new ModalStep(network, new Switchboard(network), state, fed);
        step.begin(new ModeShelf(network).suiting(step.ask(0, state)));
        double error = 0;
        for (int i = 0; i < steps; i++) {
            error = step.attempt(i * STEP_S / steps, STEP_S / steps);
            step.advance();
        }
        return new Hour(step.start().nodeC(0), error);
    }

    @ParameterizedTest
    @EnumSource
    void aStepIsNotTakenForMuchBetterThanItIs(Tank tank) {
        Hour whole = hour(tank.network(), 1);
        double wrongK =
                Math.abs(whole.slurryC() - hour(tank.network(), SHORT_STEPS).slurryC());
        assertTrue(wrongK > LEAST_K, "wrong by " + wrongK + " K");
        double saidK = tank.allowedK() * whole.error();
        assertTrue(wrongK < MOST_TIMES * saidK, "wrong by " + wrongK + " K, said " + saidK + " K");
    }
}
