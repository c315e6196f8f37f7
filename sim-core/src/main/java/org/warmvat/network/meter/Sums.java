package org.warmvat.network.meter;

/** What a span of hours added up to. Meters, switches, nodes and stocks are named by their indices in the network. */
public interface Sums {

    /** Length, h. */
    double hours();

    /** What a meter counted: J, Nm3. */
    double meter(int meter);

    /** How long a watched condition held, s. */
    double watchS(int watch);

    /** How much warmer a node was at the end than at the beginning, K. */
    double riseK(int node);

    /** How much more a stock held at the end than at the beginning. */
    double stockRise(int stock);

    /** Lowest slurry temperature, °C. */
    double slurryLeastC();

    /** Highest slurry temperature, °C. */
    double slurryMostC();

    /** What was kept of something followed from hour to hour. */
    double ofHours(int index);

    /** What was kept of something followed from day to day. */
    double ofDays(int index);

    /** A line of the results. */
    double of(Line line);

    /** A side of the account of net energy, kWh. */
    double kWh(Energy side);
}
