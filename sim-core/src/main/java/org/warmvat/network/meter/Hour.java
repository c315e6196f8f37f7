package org.warmvat.network.meter;

/** What the account sees of an hour. Meters, nodes and switches are named by their indices in the network. */
public interface Hour {

    /** Index of the weather hour. */
    int hour();

    /** What a meter counted: J, Nm3. */
    double meter(int meter);

    /** How often a switch went on. */
    int starts(int index);

    /** Temperature of a node that is no layer at its end, °C. */
    double endC(int node);
}
