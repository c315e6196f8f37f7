/**
 * From where on does more insulation or collector no longer pay?
 *
 * <p>Entry type: {@link org.warmvat.question.payback.PaybackStudy}.
 */
package org.warmvat.question.payback;
