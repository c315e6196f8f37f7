/**
 * The seam between physics and solver: nodes that hold heat, conductances, named flows, switches and jumps.
 *
 * <p>Parts of the tank add what flows at an instant to {@link org.warmvat.network.Flows} and announce the times at which they
 * jump: a {@link org.warmvat.network.Part} is driven by circuits and switches, a {@link org.warmvat.network.SlowPart} knows
 * neither. An engine turns what flows into temperatures. Entry type: {@link org.warmvat.network.Network}. The nodes form a tree on the slurry, so that one implicit
 * step costs a number of operations proportional to the number of nodes. Left out: what the flows mean (the parts know) and
 * how they are integrated (the engines know).
 */
package org.warmvat.network;
