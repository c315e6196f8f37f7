/**
 * What a built tank is, by a log of it (model section 16): the weather and the tank along the log, factors found by least squares with
 * errors that remember, what they mean for a year, and what may be wrong with the log. Entry type: {@link org.warmvat.question.fit.FitStudy}.
 */
package org.warmvat.question.fit;
