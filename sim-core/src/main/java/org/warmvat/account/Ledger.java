package org.warmvat.account;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.warmvat.network.meter.Balance;
import org.warmvat.network.meter.Declarations;
import org.warmvat.network.meter.Line;
import org.warmvat.network.meter.Meter;
import org.warmvat.network.meter.Sums;
import org.warmvat.network.meter.Unit;

/**
 * A balance of a network: in - out - stored (model section 8). What is stored comes from the states at both ends and what flows from the
 * meters, so that the residual is a check and no identity.
 */
public final class Ledger {

    private final Balance balance;
    private final List<Entry> entries = new ArrayList<>();
    private final List<Declarations.Store> stores = new ArrayList<>();

    /** A meter posted in the balance. */
    private record Entry(int meter, Meter.Posting posting, Meter.Told told) {
        Line line() {
            return told.line();
        }

        double of(Sums sums) {
            return posting.balance().unit().of(posting.factor() * sums.meter(meter));
        }
    }

    /**
     * A column of the balance's table.
     *
     * @param line the line it is told by
     * @param factor 1 for what goes in, -1 for what goes out or is stored
     */
    public record Item(Line line, int factor) {}

    private Ledger(Balance balance) {
        this.balance = balance;
    }

    /** The balances of a network in the order in which their first posting was declared. */
    static List<Ledger> of(Declarations declared) {
        Map<Balance, Ledger> ledgers = new LinkedHashMap<>();
        ledgers.put(Balance.SLURRY, new Ledger(Balance.SLURRY));
        for (int i = 0; i < declared.meters().size(); i++) {
            Meter meter = declared.meters().get(i);
            for (Meter.Posting posting : meter.posted()) {
                ledgers.computeIfAbsent(posting.balance(), Ledger::new)
                        .entries
                        .add(new Entry(i, posting, meter.told().get(0)));
            }
        }
        for (Declarations.Store store : declared.stores()) {
            ledgers.computeIfAbsent(store.balance(), Ledger::new).stores.add(store);
        }
        return List.copyOf(ledgers.values());
    }

    /** Which balance. */
    public Balance balance() {
        return balance;
    }

    /** The columns of its table, but for the residual. */
    public List<Item> items() {
        Map<Line, Item> items = new LinkedHashMap<>();
        flows().forEach(flow -> items.put(flow.line(), flow));
        stores.forEach(store -> items.putIfAbsent(store.line(), new Item(store.line(), -1)));
        return List.copyOf(items.values());
    }

    /** The same without what is stored: what comes in, then what goes out. */
    public List<Item> flows() {
        Map<Line, Item> flows = new LinkedHashMap<>();
        for (int sign : new int[] {1, -1}) {
            entries.stream()
                    .filter(entry -> sign(entry) == sign)
                    .forEach(entry -> flows.putIfAbsent(entry.line(), new Item(entry.line(), sign)));
        }
        return List.copyOf(flows.values());
    }

    /** What is told as a positive number goes in where both told and posted have the same sign: a loss is counted negative. */
    private static int sign(Entry entry) {
        return entry.posting().factor() * entry.told().factor() < 0 ? -1 : 1;
    }

    /** What does not close, in the balance's unit. */
    double residual(Sums sums) {
        double flowed = 0;
        for (Entry entry : entries) {
            flowed += entry.of(sums);
        }
        return flowed - balance.unit().of(stored(stores, sums));
    }

    /** What stores took up between the ends. */
    static double stored(List<Declarations.Store> stores, Sums sums) {
        double stored = 0;
        for (Declarations.Store store : stores) {
            stored += store.factor() * (store.isNode() ? sums.riseK(store.index()) : sums.stockRise(store.index()));
        }
        return stored;
    }

    /** What entered or left balances of a unit, whichever is more; a tank colder than its air is warmed by what it else loses. */
    static double passedThrough(List<Ledger> ledgers, Unit unit, Sums sums) {
        double entered = 0;
        double left = 0;
        for (Ledger ledger : ledgers) {
            for (Entry entry : ledger.balance.unit() == unit ? ledger.entries : List.<Entry>of()) {
                entered += entry.posting().side() == Meter.Side.ENTERING ? entry.of(sums) : 0;
                left -= entry.posting().side() == Meter.Side.LEAVING ? entry.of(sums) : 0;
            }
        }
        return Math.max(Math.abs(entered), Math.abs(left));
    }

    /** The residual of a balance as a share of what passed through; 0 when it closes to the last digit. */
    static double fraction(Ledger ledger, List<Ledger> all, Sums sums) {
        double residual = Math.abs(ledger.residual(sums));
        return residual == 0 ? 0 : residual / passedThrough(all, ledger.balance.unit(), sums);
    }

    /** The largest of all fractions. */
    static double worstFraction(List<Ledger> ledgers, Sums sums) {
        double worst = 0;
        for (Ledger ledger : ledgers) {
            worst = Math.max(worst, fraction(ledger, ledgers, sums));
        }
        return worst;
    }
}
