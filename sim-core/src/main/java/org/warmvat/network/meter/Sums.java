package org.warmvat.network.meter;

/** What a span of hours added up to. Meters, switches, nodes and stocks are named by their indices in the network. */
public interface Sums {

    /** Length, h. */
    double hours();

    /** What a meter counted: J, Nm3. */
    double meter(int meter);

    /** How long a watched condition held, s. */
    double watchS(int watch);

    /** How often a switch went on. */
    int starts(int index);

    /** How much warmer a node was at the end than at the beginning, K. */
    double riseK(int node);

    /** How much more a stock held at the end than at the beginning. */
    double stockRise(int stock);

    /** Lowest slurry temperature, °C. */
    double slurryLeastC();

    /** Highest slurry temperature, °C. */
    double slurryMostC();

    /** Highest value of an hourly judgement. */
    double highest(int judgement);

    /** Hours whose value of an hourly judgement was above its limit. */
    double hoursAbove(int judgement);

    /** What was added up over chosen hours. */
    double chosen(int index);

    /** Lowest temperature of a node at the ends of hours, °C. */
    double leastEndC(int index);

    /** Mean of the same. */
    double meanEndC(int index);

    /** Highest of the same. */
    double mostEndC(int index);

    /** Largest of a day's value. */
    double greatestDay(int index);

    /** A line of the results. */
    double of(Line line);

    /** A side of the account of net energy, kWh. */
    double kWh(Energy side);
}
