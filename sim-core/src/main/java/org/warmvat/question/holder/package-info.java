/**
 * Which gas holder serves the uses: the question {@code holder} (model section 14.4).
 *
 * <p>Entry type: {@link org.warmvat.question.holder.HolderStudy}. Left out: what a holder costs.
 */
package org.warmvat.question.holder;
