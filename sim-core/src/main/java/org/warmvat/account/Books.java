package org.warmvat.account;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.warmvat.network.Network;
import org.warmvat.network.meter.Balance;
import org.warmvat.network.meter.Declarations;
import org.warmvat.network.meter.Energy;
import org.warmvat.network.meter.Line;
import org.warmvat.network.meter.Meter;
import org.warmvat.network.meter.Sums;
import org.warmvat.network.meter.Unit;

/** The lines, balances and columns of a network, with everything looked up once: sums are then read by index. */
public final class Books {

    /** Largest residual of the balances as a share of what passed through. */
    public static final Line RESIDUAL_FRACTION = new Line("ledger/residual_fraction", "residual", Unit.SHARE);

    /** Heat that passed through: what came in from outside or what went out, whichever is more. */
    public static final Line PASSED_THROUGH = new Line("ledger/passed_through_kwh", "passed through", Unit.KWH);

    private final Network network;
    private final Order order;
    private final List<Line> lines = new ArrayList<>();
    private final Map<String, ToDoubleFunction<Sums>> values = new HashMap<>();
    private final List<Ledger> ledgers = new ArrayList<>();
    private final Map<Energy, ToDoubleFunction<Sums>> energy = new HashMap<>();

    /**
     * Opens the books of a network.
     *
     * @param network the network
     * @param order in which order its lines are told
     */
    public Books(Network network, Order order) {
        this.network = network;
        this.order = order;
        lines.addAll(order.lines());
        Declarations declared = network.declarations();
        bindMeters(declared);
        bindWatches(declared);
        bindStores(declared);
        declared.figures().forEach(figure -> bind(figure.line(), figure.value()));
        Ledger.of(declared).forEach(this::bindLedger);
        bind(RESIDUAL_FRACTION, sums -> Ledger.worstFraction(ledgers, sums));
        bind(PASSED_THROUGH, sums -> Ledger.passedThrough(ledgers, Unit.KWH, sums));
        bindEnergy(declared);
    }

    private void bindMeters(Declarations declared) {
        Map<Line, List<Term>> terms = new LinkedHashMap<>();
        for (int i = 0; i < declared.meters().size(); i++) {
            for (Meter.Told told : declared.meters().get(i).told()) {
                terms.computeIfAbsent(told.line(), line -> new ArrayList<>()).add(new Term(i, told.factor()));
            }
        }
        terms.forEach((line, sum) -> bind(line, Term.sum(sum, line.unit())));
    }

    private void bindWatches(Declarations declared) {
        for (int i = 0; i < declared.watched().size(); i++) {
            int watch = i;
            declared.watched()
                    .get(i)
                    .told()
                    .ifPresent(line -> bind(line, sums -> line.unit().of(sums.watchS(watch))));
        }
    }

    private void bindStores(Declarations declared) {
        Map<Line, List<Declarations.Store>> stores = new LinkedHashMap<>();
        declared.stores()
                .forEach(store -> stores.computeIfAbsent(store.line(), line -> new ArrayList<>())
                        .add(store));
        stores.forEach((line, held) -> bind(line, sums -> line.unit().of(Ledger.stored(held, sums))));
    }

    private void bindLedger(Ledger ledger) {
        ledgers.add(ledger);
        bind(ledger.balance().residual(), ledger::residual);
    }

    private void bindEnergy(Declarations declared) {
        for (Energy side : Energy.values()) {
            List<Term> terms = new ArrayList<>();
            for (int i = 0; i < declared.meters().size(); i++) {
                for (Meter.Share share : declared.meters().get(i).energy()) {
                    if (share.side() == side) {
                        terms.add(new Term(i, share.factor()));
                    }
                }
            }
            energy.put(side, Term.sum(terms, Unit.KWH));
        }
    }

    /** A line that the order does not know comes after the last of its group, or at the end. */
    private void bind(Line line, ToDoubleFunction<Sums> value) {
        values.put(line.path(), value);
        if (lines.stream().noneMatch(known -> known.path().equals(line.path()))) {
            int at = lines.size();
            for (int i = 0; i < lines.size(); i++) {
                at = lines.get(i).group().equals(line.group()) && !line.group().isEmpty() ? i + 1 : at;
            }
            lines.add(at, line);
        }
    }

    /** The network. */
    Network network() {
        return network;
    }

    /** The order asked for. */
    Order order() {
        return order;
    }

    /** All lines in order, those that stand in every result even where this tank has no part for them. */
    public List<Line> lines() {
        return lines;
    }

    /** Whether a part of this tank tells a line. */
    public boolean has(Line line) {
        return values.containsKey(line.path());
    }

    /** The balances. */
    public List<Ledger> ledgers() {
        return ledgers;
    }

    /** The ledger of a balance, if this tank keeps it. */
    public Optional<Ledger> ledger(Balance balance) {
        return ledgers.stream()
                .filter(ledger -> ledger.balance().equals(balance))
                .findFirst();
    }

    /** Value of a line; without a part for it 0, a share not a number. */
    double value(Line line, Sums sums) {
        ToDoubleFunction<Sums> value = values.get(line.path());
        return value == null ? line.unit() == Unit.SHARE ? Double.NaN : 0 : value.applyAsDouble(sums);
    }

    /** A side of the account of net energy, kWh. */
    double kWh(Energy side, Sums sums) {
        return energy.get(side).applyAsDouble(sums);
    }
}
