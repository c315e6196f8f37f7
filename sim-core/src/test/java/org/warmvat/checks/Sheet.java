package org.warmvat.checks;

import java.util.ArrayList;
import java.util.List;

/** The rows that one source gives, table by table. */
public final class Sheet {

    /** No more values of one table count than this. */
    static final int MOST_COUNTED_OF_A_TABLE = 5;

    private final List<Row> rows = new ArrayList<>();
    private final List<String> explanations = new ArrayList<>();

    /** A printed table, or a worked example; its first five values count. */
    public final class Table {
        private final Provenance provenance;
        private int counted;

        private Table(Provenance provenance) {
            this.provenance = provenance;
        }

        /** Adds a value that must be reproduced. */
        public Table value(String quantity, double published, double ours, double tolerance) {
            boolean counts = provenance.counts() && counted < MOST_COUNTED_OF_A_TABLE;
            counted++;
            rows.add(new Row(
                    counts ? Row.Kind.COUNTED : Row.Kind.ALSO, quantity, published, ours, tolerance, provenance));
            return this;
        }

        /** Adds a printed value that its own inputs do not give, with the reason. */
        public Table notReproduced(String quantity, double published, double ours, double tolerance, String why) {
            rows.add(new Row(Row.Kind.NOT_REPRODUCED, quantity, published, ours, tolerance, provenance));
            explanations.add(quantity + ": " + why);
            return this;
        }
    }

    /** Begins a table. */
    public Table table(Provenance provenance) {
        return new Table(provenance);
    }

    /** All rows. */
    List<Row> rows() {
        return rows;
    }

    /** Rows of a kind. */
    List<Row> rows(Row.Kind kind) {
        return rows.stream().filter(row -> row.kind() == kind).toList();
    }

    /** Why rows are not reproduced. */
    List<String> explanations() {
        return explanations;
    }
}
