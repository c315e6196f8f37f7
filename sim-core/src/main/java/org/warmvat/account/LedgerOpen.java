package org.warmvat.account;

import java.util.Locale;
import org.warmvat.engine.EngineFailure;

/** A balance of a run or a month does not close: what was found is no answer. */
public final class LedgerOpen extends EngineFailure {

    /** Share of what passed through that a residual may be (model section 8). */
    public static final double MOST_FRACTION = 1e-4;

    private static final long serialVersionUID = 1L;

    /** Names the balance and the span. */
    LedgerOpen(Ledger ledger, String when, double residual, double fraction) {
        super(String.format(
                Locale.ROOT,
                "the balance of the %s does not close in %s: %.3g %s are missing, %.1e of what passed through, expected at most"
                        + " %.0e; a layer, a fluid or a feed of the design may be too thin, too light or too much to be computed",
                ledger.balance().name().toLowerCase(Locale.ROOT),
                when,
                residual,
                ledger.balance().unit().text(),
                fraction,
                MOST_FRACTION));
    }
}
