/**
 * The everyday engine: an exponential integrator with exact modes per chain, closed forms of slurry and circuits between switchings, and
 * waveform relaxation between the two.
 *
 * <p>Entry type: {@link org.warmvat.engine.exponential.ExponentialEngine}. Left out: what the nodes mean; the engine reads the same
 * description of a tank as the reference engine.
 */
package org.warmvat.engine.exponential;
