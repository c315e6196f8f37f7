/**
 * Misspelt words: which known one was probably meant.
 *
 * <p>Entry type: {@link org.warmvat.spelling.Nearest}. Left out: what the words stand for.
 */
package org.warmvat.spelling;
