package org.warmvat.network;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.warmvat.network.meter.Declarations;
import org.warmvat.network.meter.Meter;
import org.warmvat.network.meter.Watched;

/**
 * A tank as the engines see it: nodes, what passes heat between them, stocks, meters, switches and watches, and the parts that keep
 * these up to date. Belongs to one run.
 */
public final class Network {

    /** The node of the slurry. */
    public static final int SLURRY = 0;

    /** Meter of a flow that is not counted. */
    public static final int UNMETERED = -1;

    /** No node, no stock, no switch. */
    public static final int NOWHERE = -1;

    private final List<Node> nodes;
    private final List<Chain> chains;
    private final List<Exchange> exchanges;
    private final List<Circuit> circuits;
    private final List<Source> sources;
    private final List<Stock> stocks;
    private final Declarations declarations;
    private final List<Switch> switches;
    private final List<Watch> watches;
    private final int[] depthMeters;
    private final Part[] jumping;
    private final Part[] entering;
    private final Part[] looking;
    private final Part[] decaying;
    private final Part[] asked;
    private final Part[] told;

    private Network(Assembly assembly) {
        nodes = List.copyOf(assembly.nodes);
        chains = List.copyOf(assembly.chains);
        exchanges = List.copyOf(assembly.exchanges);
        circuits = List.copyOf(assembly.circuits);
        sources = List.copyOf(assembly.sources);
        stocks = List.copyOf(assembly.stocks);
        declarations = assembly.declarations;
        switches = List.copyOf(assembly.switches);
        watches = List.copyOf(assembly.watches);
        depthMeters = assembly.depthMeters.stream().mapToInt(Integer::intValue).toArray();
        jumping = assembly.having("nextJumpS", double.class);
        entering = assembly.having("enter", Interval.class);
        looking = assembly.having("look", double.class, State.class);
        decaying = assembly.having("decay", State.class);
        asked = assembly.having("ask", double.class, State.class);
        told = assembly.having("reached", double.class, State.class);
    }

    /** Gathers a network: the slurry first, then everything else in any order. */
    public static final class Assembly {
        private final List<Node> nodes = new ArrayList<>();
        private final List<Chain> chains = new ArrayList<>();
        private final List<Exchange> exchanges = new ArrayList<>();
        private final List<Circuit> circuits = new ArrayList<>();
        private final List<Source> sources = new ArrayList<>();
        private final List<Stock> stocks = new ArrayList<>();
        private final Declarations declarations = new Declarations();
        private final List<Switch> switches = new ArrayList<>();
        private final List<Watch> watches = new ArrayList<>();
        private final List<Integer> depthMeters = new ArrayList<>();
        private final List<Part> parts = new ArrayList<>();

        /** Begins with the slurry, node 0. */
        public Assembly(double slurryJPerK, double initialC) {
            nodes.add(new Node("slurry", Node.Kind.SLURRY, slurryJPerK, initialC));
        }

        private int node(Node node) {
            nodes.add(node);
            return nodes.size() - 1;
        }

        /** Adds a temperature that a part prescribes. */
        public int known(String name, double initialC) {
            return node(new Node(name, Node.Kind.KNOWN, 0, initialC));
        }

        /** Adds a room, without mass or with some. */
        public int room(String name, double capacityJPerK, double initialC) {
            return node(new Node(name, Node.Kind.ROOM, capacityJPerK, initialC));
        }

        /** Adds the node of a circuit. */
        public int body(String name, double capacityJPerK, double initialC) {
            return node(new Node(name, Node.Kind.CIRCUIT, capacityJPerK, initialC));
        }

        /** Joins a body to the slurry. */
        public Circuit circuit(int body, Circuit.Coil coil, Circuit.Quadratic quadratic, Circuit.Heater heater) {
            check("circuit", body, Node.Kind.CIRCUIT);
            circuits.add(new Circuit(body, coil, quadratic, heater));
            return circuits.get(circuits.size() - 1);
        }

        /**
         * Adds a chain and its nodes.
         *
         * @param name of the nodes
         * @param inside node inside of it, the slurry or a room
         * @param capacityJPerK of its nodes from inside to outside, at least one
         * @param linkWPerK of each to the one inside of it
         * @param face its outer end
         * @param guessC temperature to begin with
         */
        public Chain chain(
                String name, int inside, double[] capacityJPerK, double[] linkWPerK, Chain.Face face, double guessC) {
            check(name, inside, Node.Kind.SLURRY, Node.Kind.ROOM);
            check(name, face.outside(), Node.Kind.KNOWN, Node.Kind.ROOM);
            int first = nodes.size();
            for (double capacity : capacityJPerK) {
                node(new Node(name, Node.Kind.LAYER, capacity, guessC));
            }
            chains.add(new Chain(inside, first, capacityJPerK.clone(), linkWPerK.clone(), face));
            return chains.get(chains.size() - 1);
        }

        /** A conductance between two nodes; the meter counts what the first receives. */
        public Exchange exchange(int node, int other, double wPerK, int meter) {
            return exchange(node, other, wPerK, meter, Exchange.Opening.NEVER);
        }

        /** The same, opening as the first gets warm. */
        public Exchange exchange(int node, int other, double wPerK, int meter, Exchange.Opening opening) {
            check("exchange", node, Node.Kind.SLURRY, Node.Kind.ROOM, Node.Kind.CIRCUIT);
            check("exchange", other, Node.Kind.SLURRY, Node.Kind.ROOM, Node.Kind.KNOWN);
            if (nodes.get(node).isMassless() && nodes.get(other).isMassless()) {
                throw new IllegalArgumentException("exchange: two rooms without mass may not touch");
            }
            exchanges.add(new Exchange(node, other, wPerK, meter, opening));
            return exchanges.get(exchanges.size() - 1);
        }

        /** A source of heat into the slurry, a room or a circuit, or with {@link Network#NOWHERE} of what is only metered. */
        public Source source(int node, int meter, Gate gate) {
            if (node != NOWHERE) {
                check("source", node, Node.Kind.SLURRY, Node.Kind.ROOM, Node.Kind.CIRCUIT);
            }
            sources.add(new Source(node, meter, gate));
            return sources.get(sources.size() - 1);
        }

        /** A source that is always on. */
        public Source source(int node, int meter) {
            return source(node, meter, Gate.OPEN);
        }

        /** Adds a stock. */
        public Stock stock(String name, double initial) {
            stocks.add(new Stock(name, initial, stocks.size()));
            return stocks.get(stocks.size() - 1);
        }

        /**
         * Lets a stock overflow at a content.
         *
         * @param scale makes of the stock's unit something like a kelvin, for the switch that tells that it is full
         * @return that switch
         */
        public Switch bounded(Stock stock, double most, double scale, int surplusMeter) {
            double clearlyBelow = most * (1 - 1e-6);
            Switch full = switchOf(stock.name() + "_full")
                    .startsWhen(Gate.OPEN, Margin.ofStock(stock, most, scale))
                    .stopsWhen(Gate.OPEN, Margin.ofStock(stock, clearlyBelow, -scale));
            stock.bound(new Stock.Bound(most, full.number(), surplusMeter));
            return full;
        }

        /** The meter of a key, added at its first use. */
        public int meter(Meter meter) {
            return declarations.meter(meter);
        }

        /** A meter that is told nowhere, added at its first use. */
        public int meter(String key) {
            return meter(Meter.of(key));
        }

        /** What the parts say about themselves, to be added to. */
        public Declarations declare() {
            return declarations;
        }

        /** Adds a switch; it starts off and stays so until it is told what moves it. */
        public Switch switchOf(String name) {
            switches.add(new Switch(name, switches.size()));
            return switches.get(switches.size() - 1);
        }

        /** Adds a watch that always looks. */
        public int watch(Watched watched, Margin margin) {
            return watch(watched, Gate.OPEN, margin, UNMETERED);
        }

        /** Adds a watch that looks while a gate is open. */
        public int watch(Watched watched, Gate gate, ToDoubleFunction<State> margin) {
            return watch(watched, new Watch(watched.key(), gate, margin), UNMETERED);
        }

        /** Adds a watch whose margin a meter integrates while it holds. */
        public int watch(Watched watched, Gate gate, Margin margin, int depthMeter) {
            return watch(watched, new Watch(watched.key(), gate, margin), depthMeter);
        }

        private int watch(Watched watched, Watch watch, int depthMeter) {
            declarations.watched(watched);
            watches.add(watch);
            depthMeters.add(depthMeter);
            return watches.size() - 1;
        }

        /** Adds a part that keeps its pieces up to date. */
        public void part(Part part) {
            parts.add(part);
        }

        /** The parts that do something of a kind themselves: the engines ask millions of times a run. */
        private Part[] having(String method, Class<?>... arguments) {
            return parts.stream()
                    .filter(part -> overrides(part, method, arguments))
                    .toArray(Part[]::new);
        }

        private static boolean overrides(Part part, String method, Class<?>... arguments) {
            try {
                return !part.getClass()
                        .getMethod(method, arguments)
                        .getDeclaringClass()
                        .equals(Part.class);
            } catch (NoSuchMethodException e) {
                throw new IllegalStateException(method, e);
            }
        }

        private void check(String what, int node, Node.Kind... allowed) {
            if (node < 0
                    || node >= nodes.size()
                    || !List.of(allowed).contains(nodes.get(node).kind())) {
                throw new IllegalArgumentException(
                        what + ": node " + node + ", expected one of kind " + List.of(allowed));
            }
        }

        /** The finished network. */
        public Network build() {
            return new Network(this);
        }
    }

    /** The nodes; the first is the slurry. */
    public List<Node> nodes() {
        return nodes;
    }

    /** Numbers of the nodes of some kinds. */
    public int[] nodes(Node.Kind... kinds) {
        return IntStream.range(0, nodes.size())
                .filter(i -> List.of(kinds).contains(nodes.get(i).kind()))
                .toArray();
    }

    /** Heat capacity of each node, J/K. */
    public double[] capacitiesJPerK() {
        return nodes.stream().mapToDouble(Node::capacityJPerK).toArray();
    }

    /** The chains. */
    public List<Chain> chains() {
        return chains;
    }

    /** The exchanges. */
    public List<Exchange> exchanges() {
        return exchanges;
    }

    /** The circuits. */
    public List<Circuit> circuits() {
        return circuits;
    }

    /** The sources. */
    public List<Source> sources() {
        return sources;
    }

    /** The stocks. */
    public List<Stock> stocks() {
        return stocks;
    }

    /** Keys of the meters. */
    public List<String> meters() {
        return declarations.meters().stream().map(Meter::key).toList();
    }

    /** What the parts say about themselves. */
    public Declarations declarations() {
        return declarations;
    }

    /** The switches. */
    public List<Switch> switches() {
        return switches;
    }

    /** The watches. */
    public List<Watch> watches() {
        return watches;
    }

    /** Meter of a watch's depth, or {@link #UNMETERED}. */
    public int depthMeter(int watch) {
        return depthMeters[watch];
    }

    /** State at the start: initial temperatures and stocks, every switch off. */
    public State initialState() {
        return new State(
                nodes.stream().mapToDouble(Node::initialC).toArray(),
                stocks.stream().mapToDouble(Stock::initial).toArray(),
                new boolean[switches.size()]);
    }

    /** The earliest jump any part announces strictly after a time, s. */
    public double nextJumpS(double timeS) {
        double next = Double.POSITIVE_INFINITY;
        for (Part part : jumping) {
            next = Math.min(next, part.nextJumpS(timeS));
        }
        return next;
    }

    /** Lets every part enter an interval. */
    public void enter(Interval interval) {
        for (Part part : entering) {
            part.enter(interval);
        }
    }

    /** Renews what depends on time alone. */
    public void look(double timeS, State state) {
        for (Part part : looking) {
            part.look(timeS, state);
        }
    }

    /** Renews gain and loss of the stocks. */
    public void decay(State state) {
        for (Part part : decaying) {
            part.decay(state);
        }
    }

    /** Renews the sources that depend on the state. */
    public void ask(double timeS, State state) {
        for (Part part : asked) {
            part.ask(timeS, state);
        }
    }

    /** Tells every part of the state at the end of an interval. */
    public void reached(double timeS, State state) {
        for (Part part : told) {
            part.reached(timeS, state);
        }
    }
}
