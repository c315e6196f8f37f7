package org.warmvat.tank;

import java.time.LocalDateTime;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.Map;
import org.warmvat.account.Account;
import org.warmvat.account.Books;
import org.warmvat.engine.Engine;
import org.warmvat.engine.HourRecord;
import org.warmvat.engine.HourSink;
import org.warmvat.engine.Hours;
import org.warmvat.network.Network;
import org.warmvat.network.State;
import org.warmvat.network.Stock;

/** A tank under way: its network and its present state. For one thread. */
public final class TankRun {

    private final TankNetwork tank;
    private final LocalDateTime fileStart;
    private final State state;
    private final Engine engine;

    TankRun(TankNetwork tank, LocalDateTime fileStart, State state, Engine engine) {
        this.tank = tank;
        this.fileStart = fileStart;
        this.state = state;
        this.engine = engine;
    }

    /**
     * Goes on over some weather hours from the present state; the clock may be set back.
     *
     * @param hours the hours
     * @param sink receives each hour and may end the run early
     */
    public void over(Hours hours, HourSink sink) {
        engine.run(tank.network(), state, hours, sink);
    }

    /**
     * Goes on over some weather hours from the present state and adds them up.
     *
     * @param hours the hours
     * @param keep what is kept beyond sums
     * @param listener told of each hour, given the account; false ends the run early
     */
    public Account account(Hours hours, Account.Keep keep, Listener listener) {
        Account[] made = new Account[1];
        made[0] = new Account(
                new Books(tank.network(), Lines.ORDER),
                state,
                fileStart,
                hours,
                keep,
                hour -> listener.accept(made[0], hour));
        over(hours, made[0]);
        return made[0];
    }

    /** The same to the end of the hours. */
    public Account account(Hours hours, Account.Keep keep) {
        return account(hours, keep, (account, hour) -> true);
    }

    /** Listens to a run that is being added up. */
    @FunctionalInterface
    public interface Listener {
        /** Takes an hour that was added; false ends the run. */
        boolean accept(Account soFar, HourRecord hour);
    }

    /** Empties the stock of a name, if there is one. */
    void empty(String stock) {
        for (Stock one : tank.network().stocks()) {
            if (one.name().equals(stock)) {
                state.setStock(one.number(), 0);
            }
        }
    }

    /** Beginning of the weather file. */
    public LocalDateTime fileStart() {
        return fileStart;
    }

    /** Slurry temperature now, °C. */
    public double slurryC() {
        return state.nodeC(tank.slurry());
    }

    /** Index of a meter by its name; -1 when the design has none such. */
    public int meter(String name) {
        return tank.network().meters().indexOf(name);
    }

    /** The network that runs. */
    public TankNetwork tank() {
        return tank;
    }

    /** The present state; the run's own. */
    public State state() {
        return state;
    }

    /**
     * Takes over the state of another tank: every node, stock and switch that both have by the same name; of nodes of one name,
     * such as the slices of a wall, the first the first and so on. A switch that only this one has is off.
     */
    public void takeOver(Network otherNetwork, State other) {
        Network own = tank.network();
        Map<String, Deque<Integer>> others = new HashMap<>();
        for (int i = 0; i < otherNetwork.nodes().size(); i++) {
            others.computeIfAbsent(otherNetwork.nodes().get(i).name(), name -> new ArrayDeque<>())
                    .add(i);
        }
        for (int node = 0; node < own.nodes().size(); node++) {
            Deque<Integer> alike = others.getOrDefault(own.nodes().get(node).name(), new ArrayDeque<>());
            if (!alike.isEmpty()) {
                state.setNodeC(node, other.nodeC(alike.remove()));
            }
        }
        for (int stock = 0; stock < own.stocks().size(); stock++) {
            state.setStock(stock, other.stock(stock));
        }
        for (int one = 0; one < own.switches().size(); one++) {
            state.setOn(one, wasOn(own.switches().get(one).name(), otherNetwork, other));
        }
    }

    private static boolean wasOn(String name, Network network, State state) {
        for (int i = 0; i < network.switches().size(); i++) {
            if (network.switches().get(i).name().equals(name)) {
                return state.isOn(i);
            }
        }
        return false;
    }
}
