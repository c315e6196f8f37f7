/** What {@code fit} answers. Entry type: {@link org.warmvat.cli.answer.fit.FitAnswer}. */
package org.warmvat.cli.answer.fit;
