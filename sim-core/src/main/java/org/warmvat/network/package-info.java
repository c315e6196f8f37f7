/**
 * The seam between physics and solver: nodes that hold heat, conductances, named flows, switches and jumps.
 *
 * <p>A {@link org.warmvat.network.Part} of the tank contributes what flows at an instant into
 * {@link org.warmvat.network.Flows} and announces the times at which it jumps; an engine turns the contributions into
 * temperatures. Entry type: {@link org.warmvat.network.Network}. The nodes form a tree on the slurry, so that one implicit
 * step costs a number of operations proportional to the number of nodes. Left out: what the flows mean (the parts know) and
 * how they are integrated (the engines know).
 */
package org.warmvat.network;
