/** The answer to {@code spread}: bands, chances and influences, with their pictures. Entry type: {@link org.warmvat.cli.answer.spread.SpreadAnswer}. */
package org.warmvat.cli.answer.spread;
