/**
 * The design found among what can be bought (model sections 18.1 to 18.3): yearly cost, net energy or energy bought within limits.
 *
 * <p>Entry types: {@link org.warmvat.question.choose.ChooseStudy} and {@link org.warmvat.question.choose.Catalogue}. Left out: reading a
 * file of choices, and words.
 */
package org.warmvat.question.choose;
