/**
 * Turns a network's contributions into temperatures over time.
 *
 * <p>Entry type: {@link org.warmvat.engine.Engine}. {@link org.warmvat.engine.ReferenceEngine} is meant to be trusted,
 * the fast engine to be used every day; both read the very same contributions. The engines know nodes, flows, stocks and
 * switches, and nothing of foam or sun. The only package that uses an integration library.
 */
package org.warmvat.engine;
