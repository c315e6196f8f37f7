/**
 * Which of the numbers that nobody knows well, and that a design leaves to their defaults, does its answer hang on? A fixed dozen,
 * each run a fifth lower and higher, temperatures 2 K.
 *
 * <p>Entry type: {@link org.warmvat.question.sensitive.SensitiveStudy}. How such numbers work together is the question of a spread.
 */
package org.warmvat.question.sensitive;
