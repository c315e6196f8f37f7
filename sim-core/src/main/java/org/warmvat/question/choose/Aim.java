package org.warmvat.question.choose;

import java.util.List;

/** What is to be best. Each is written so that less is better. */
public enum Aim {
    /** Yearly cost, in the design's money: the less the better. */
    COST,
    /** Net energy, kWh: the more the better. */
    NET,
    /** Energy bought for heat, kWh: the less the better. */
    BOUGHT;

    /** All aims, in the order of the search's weights. */
    static final List<Aim> ALL = List.of(COST, NET, BOUGHT);

    /** Its place among the weights. */
    int place() {
        return ALL.indexOf(this);
    }

    /** The aim that stands beside it in the front of two. */
    public Aim beside() {
        return this == COST ? NET : COST;
    }
}
