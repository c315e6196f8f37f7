/**
 * Layers, films and fittings between the slurry and what is outside, as a design states them.
 *
 * <p>Entry type: {@link org.warmvat.design.envelope.Envelope}. Records are valid from birth; the whole is {@link org.warmvat.design.Design}.
 */
package org.warmvat.design.envelope;
