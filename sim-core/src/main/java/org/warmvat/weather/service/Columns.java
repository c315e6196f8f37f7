package org.warmvat.weather.service;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.warmvat.weather.Quantity;
import org.warmvat.weather.layout.Layout;

/** The columns of a layout by the headings that a file of the kind may have. */
final class Columns {
    private final List<String> names;
    private final Map<Quantity, Layout.Column> columns = new EnumMap<>(Quantity.class);

    Columns(List<String> names) {
        this.names = names;
    }

    /** A column that is used where the file has it. */
    Columns may(Quantity quantity, String heading, double factor) {
        if (names.contains(heading) && !columns.containsKey(quantity)) {
            columns.put(quantity, new Layout.Column(new Layout.ByHeading(heading), factor, 0));
        }
        return this;
    }

    Columns may(Quantity quantity, String heading) {
        return may(quantity, heading, 1);
    }

    /** A column without which a file of this kind is refused. */
    Columns must(Quantity quantity, String heading, double factor) {
        columns.put(quantity, new Layout.Column(new Layout.ByHeading(heading), factor, 0));
        return this;
    }

    Columns must(Quantity quantity, String heading) {
        return must(quantity, heading, 1);
    }

    /** Columns that are added up. */
    Columns sum(Quantity quantity, List<String> headings) {
        List<Layout.Place> places = headings.stream()
                .filter(names::contains)
                .map(name -> (Layout.Place) new Layout.ByHeading(name))
                .toList();
        columns.put(quantity, new Layout.Column(places, 1, 0, Set.of()));
        return this;
    }

    Map<Quantity, Layout.Column> map() {
        return columns;
    }
}
