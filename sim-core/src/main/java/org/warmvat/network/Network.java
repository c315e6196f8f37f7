package org.warmvat.network;

import java.util.ArrayList;
import java.util.List;

/**
 * A tank as the engines see it: a tree of nodes rooted at the slurry, stocks, meters, switches and watches, and the parts
 * that make them live. Immutable but for its parts, which belong to one run.
 */
public final class Network {

    private final List<Node> nodes;
    private final int[] parent;
    private final double[] capacityJPerK;
    private final double[] linkWPerK;
    private final int liveNodes;
    private final List<Stock> stocks;
    private final Declarations declarations;
    private final List<NamedSwitch> switches;
    private final List<NamedWatch> watches;
    private final Scheduled[] scheduled;
    private final Part[] parts;
    private final SlowPart[] slowParts;

    /**
     * A node. Live nodes, slurry and circuits, come first; those that start steady, the layers of the envelope, follow, and what
     * flows into them depends on time alone.
     *
     * @param name its name
     * @param capacityJPerK heat capacity; 0 for a junction without mass, which starts steady and whose parent and
     *     children must have mass
     * @param parent index of its parent; the root's is -1
     * @param initialC temperature at the start; for a steady node a first guess
     * @param startsSteady whether it starts in equilibrium with its surroundings at the first instant
     * @param linkWPerK conductance to its parent, W/K, which a node that starts steady keeps for good
     */
    public record Node(
            String name, double capacityJPerK, int parent, double initialC, boolean startsSteady, double linkWPerK) {

        /** A node whose link, if any, is what a part says ({@link Flows#link}). */
        public Node(String name, double capacityJPerK, int parent, double initialC, boolean startsSteady) {
            this(name, capacityJPerK, parent, initialC, startsSteady, 0);
        }
    }

    /**
     * Something else than heat that is kept account of, such as biodegradable solids.
     *
     * @param name its name
     * @param initial content at the start
     */
    public record Stock(String name, double initial) {}

    /**
     * A switch with its name.
     *
     * @param name its name
     * @param control what moves it
     */
    public record NamedSwitch(String name, Switch control) {}

    /**
     * A watch with its name.
     *
     * @param name its name
     * @param condition what is watched
     */
    public record NamedWatch(String name, Watch condition) {}

    private Network(Assembly assembly) {
        nodes = List.copyOf(assembly.nodes);
        parent = nodes.stream().mapToInt(Node::parent).toArray();
        capacityJPerK = nodes.stream().mapToDouble(Node::capacityJPerK).toArray();
        linkWPerK = nodes.stream().mapToDouble(Node::linkWPerK).toArray();
        liveNodes = (int) nodes.stream().filter(node -> !node.startsSteady()).count();
        stocks = List.copyOf(assembly.stocks);
        declarations = assembly.declarations;
        switches = List.copyOf(assembly.switches);
        watches = List.copyOf(assembly.watches);
        scheduled = assembly.scheduled.toArray(Scheduled[]::new);
        parts = assembly.parts.toArray(Part[]::new);
        slowParts = assembly.slowParts.toArray(SlowPart[]::new);
    }

    /** Gathers a network: nodes first from the root outwards, then the parts that use them. */
    public static final class Assembly {
        private final List<Node> nodes = new ArrayList<>();
        private final List<Stock> stocks = new ArrayList<>();
        private final Declarations declarations = new Declarations();
        private final List<NamedSwitch> switches = new ArrayList<>();
        private final List<NamedWatch> watches = new ArrayList<>();
        private final List<Scheduled> scheduled = new ArrayList<>();
        private final List<Part> parts = new ArrayList<>();
        private final List<SlowPart> slowParts = new ArrayList<>();

        /**
         * Adds a node after its parent.
         *
         * @throws IllegalArgumentException when the parent does not exist yet, two junctions without mass would touch, a live node
         *     has no mass or would follow a steady one, or a steady node would hang on a live one other than the first
         */
        public int node(Node node) {
            boolean root = nodes.isEmpty();
            if (root != (node.parent() < 0) || node.parent() >= nodes.size()) {
                throw new IllegalArgumentException("node " + node.name() + ": parent " + node.parent()
                        + ", expected one of the " + nodes.size() + " nodes before it, -1 for the first");
            }
            if (!root && node.capacityJPerK() == 0 && nodes.get(node.parent()).capacityJPerK() == 0) {
                throw new IllegalArgumentException(
                        "node " + node.name() + ": two junctions without mass may not touch");
            }
            checkOrder(node);
            nodes.add(node);
            return nodes.size() - 1;
        }

        private void checkOrder(Node node) {
            if (!node.startsSteady()
                    && !nodes.isEmpty()
                    && nodes.get(nodes.size() - 1).startsSteady()) {
                throw new IllegalArgumentException("node " + node.name() + ": live nodes come before steady ones");
            }
            if (!node.startsSteady() && node.capacityJPerK() == 0) {
                throw new IllegalArgumentException("node " + node.name() + ": a junction without mass starts steady");
            }
            boolean hangsOnCircuit =
                    node.parent() > 0 && !nodes.get(node.parent()).startsSteady();
            if (node.startsSteady() && (nodes.isEmpty() || hangsOnCircuit)) {
                throw new IllegalArgumentException(
                        "node " + node.name() + ": a steady node hangs on the first node or on a steady one");
            }
        }

        /** Adds a stock. */
        public int stock(Stock stock) {
            stocks.add(stock);
            return stocks.size() - 1;
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

        /** Adds a switch; it starts off. */
        public int switchOf(String name, Switch control) {
            switches.add(new NamedSwitch(name, control));
            return switches.size() - 1;
        }

        /** Adds a watch. */
        public int watch(Watched watched, Watch condition) {
            declarations.watched(watched);
            watches.add(new NamedWatch(watched.key(), condition));
            return watches.size() - 1;
        }

        /** Adds a watch of which nothing is told. */
        public int watch(String key, Watch condition) {
            return watch(Watched.of(key), condition);
        }

        /** Adds a part that temperatures, stocks and switches drive. */
        public void part(Part part) {
            scheduled.add(part);
            parts.add(part);
        }

        /** Adds a part that depends on time alone. */
        public void slowPart(SlowPart part) {
            scheduled.add(part);
            slowParts.add(part);
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

    /** Parent of each node, -1 for the first. Shared: read only. */
    public int[] parents() {
        return parent;
    }

    /** Heat capacity of each node, J/K. Shared: read only. */
    public double[] capacitiesJPerK() {
        return capacityJPerK;
    }

    /** Lasting conductance of each steady-starting node to its parent, W/K; 0 for live ones. Shared: read only. */
    public double[] linksWPerK() {
        return linkWPerK;
    }

    /** How many nodes are live: these come first, the steady-starting ones after them. */
    public int liveNodes() {
        return liveNodes;
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
    public List<NamedSwitch> switches() {
        return switches;
    }

    /** The watches. */
    public List<NamedWatch> watches() {
        return watches;
    }

    /** State at the start: initial temperatures and stocks, every switch off. */
    public State initialState() {
        return new State(
                nodes.stream().mapToDouble(Node::initialC).toArray(),
                stocks.stream().mapToDouble(Stock::initial).toArray(),
                new boolean[switches.size()]);
    }

    /** An empty gathering place for what temperatures and switches drive. */
    public Flows newLiveFlows() {
        return new Flows(liveNodes, liveNodes, stocks.size());
    }

    /** An empty gathering place for what depends on time alone. */
    public Flows newSlowFlows() {
        return new Flows(nodes.size(), 0, 0);
    }

    /** The earliest jump any part announces strictly after a time, s. */
    public double nextJumpS(double timeS) {
        double next = Double.POSITIVE_INFINITY;
        for (Scheduled part : scheduled) {
            next = Math.min(next, part.nextJumpS(timeS));
        }
        return next;
    }

    /** Lets every part enter an interval. */
    public void enter(Interval interval) {
        for (Scheduled part : scheduled) {
            part.enter(interval);
        }
    }

    /** Gathers what temperatures and switches drive at an instant. */
    public void contribute(double timeS, State state, Flows flows) {
        flows.clear(state);
        for (Part part : parts) {
            part.contribute(timeS, state, flows);
        }
    }

    /** Gathers what depends on time alone at an instant. */
    public void surround(double timeS, Flows flows) {
        flows.clear();
        for (SlowPart part : slowParts) {
            part.surround(timeS, flows);
        }
    }
}
