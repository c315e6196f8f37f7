/**
 * Which of several designs, or of several weathers, is better at what?
 *
 * <p>Entry type: {@link org.warmvat.question.compare.CompareStudy}.
 */
package org.warmvat.question.compare;
