/**
 * Numbers, dates and keys of a design as they stand in sentences and tables: {@link org.warmvat.cli.words.Words}, {@link
 * org.warmvat.cli.words.Numerals} and {@link org.warmvat.cli.words.AxisWords}; {@link org.warmvat.cli.words.Telling} strings sentences together. Left out: whole sentences.
 */
package org.warmvat.cli.words;
