/**
 * Is the design as it was meant? Remarks on numbers that are unlikely: slips of ten, of units, of missing parts.
 *
 * <p>Entry type: {@link org.warmvat.question.plausible.Plausibility}. The bounds are common practice without a source and stand in the
 * design's block {@code plausible}. Left out: what is refused (the records do that) and what only a run can show.
 */
package org.warmvat.question.plausible;
