/**
 * What turns a network's description into temperatures over time, and what every engine needs: the hour's record, the loop over hours, the
 * steady start, the switches.
 *
 * <p>Entry type: {@link org.warmvat.engine.Engine}. The reference engine is meant to be trusted, the exponential engine to be used every
 * day; each has its room and knows nothing of the other. The engines know nodes, flows, stocks and switches, and nothing of foam or sun.
 */
package org.warmvat.engine;
