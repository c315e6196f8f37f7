/**
 * Draws of uncertain inputs and which of them an answer's spread comes from: {@link org.warmvat.sampling.ShiftedSobol} makes
 * points, {@link org.warmvat.sampling.Spread} turns them into values of an input, {@link org.warmvat.sampling.SobolIndices} says
 * what each input adds, {@link org.warmvat.sampling.Share} how often something holds. Left out: what is drawn and what is run.
 */
package org.warmvat.sampling;
