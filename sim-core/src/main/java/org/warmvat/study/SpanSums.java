package org.warmvat.study;

import java.util.OptionalDouble;

/** What a span of hours added up to. */
interface SpanSums {

    /** Length, h. */
    double hours();

    /** Integral of a meter: J for heat and electricity, Nm3 for gas; 0 when the design has no such meter. */
    double meter(String name);

    /** How long a watched condition held, s; 0 when nothing watches it. */
    double watchS(String name);

    /** How often a switch went on; 0 when there is none. */
    int starts(String name);

    /** Whether the network has a switch of a name. */
    boolean hasSwitch(String name);

    /** Rise of the slurry between the ends, K. */
    double slurryRiseK();

    /** Heat stored in the envelope between the ends, J. */
    double envelopeStoredJ();

    /** Heat stored in the collector between the ends, J. */
    double collectorStoredJ();

    /** Heat stored in the backup water between the ends, J. */
    double backupStoredJ();

    /** Lowest slurry temperature, °C. */
    double slurryLeastC();

    /** Highest slurry temperature, °C. */
    double slurryMostC();

    /** Highest hourly share of dosed air; empty when none is dosed. */
    OptionalDouble highestAirShare();

    /** Hours whose share of dosed air is above the design's warning mark. */
    int hoursAboveAirLimit();
}
