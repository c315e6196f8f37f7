/**
 * How far the answer may lie: the year of a tank whose inputs are not known well, drawn many times over several years of weather (model
 * section 17).
 *
 * <p>Entry types: {@link org.warmvat.question.spread.SpreadStudy} and {@link org.warmvat.question.spread.SpreadResult}; {@link
 * org.warmvat.question.spread.UncertainTank} turns points into designs. Left out: points, bands and indices, which are {@code sampling}.
 */
package org.warmvat.question.spread;
