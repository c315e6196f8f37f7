/**
 * The seam between physics and solver: a tank as data of a few general kinds, which both engines read.
 *
 * <p>Nodes are temperatures: the slurry, circuits, rooms, layers and what the weather prescribes. {@link org.warmvat.network.Chain}s,
 * {@link org.warmvat.network.Exchange}s, {@link org.warmvat.network.Circuit}s and {@link org.warmvat.network.Source}s pass heat between
 * them; {@link org.warmvat.network.Stock}s, {@link org.warmvat.network.Switch}es and {@link org.warmvat.network.Watch}es say what else
 * goes on. A {@link org.warmvat.network.Part} of the tank makes its pieces once and renews their numbers when asked. Entry type: {@link
 * org.warmvat.network.Network}. Left out: what the pieces mean (the parts know) and how they are integrated (the engines know).
 */
package org.warmvat.network;
