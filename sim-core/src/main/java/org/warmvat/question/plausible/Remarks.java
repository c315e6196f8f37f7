package org.warmvat.question.plausible;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.warmvat.question.plausible.Remark.Gravity;

/** Remarks being gathered. */
final class Remarks {

    private final List<Remark> all = new ArrayList<>();

    void add(String key, Gravity gravity, String form, Object... values) {
        all.add(new Remark(key, String.format(Locale.ROOT, form, values), gravity));
    }

    /** The gravest first. */
    List<Remark> sorted() {
        return all.stream().sorted(Comparator.comparing(Remark::gravity)).toList();
    }

    static String threeFigures(double number) {
        return new BigDecimal(number)
                .round(new MathContext(3))
                .stripTrailingZeros()
                .toPlainString();
    }
}
