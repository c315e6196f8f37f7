/** What is said of payback; entry type {@link org.warmvat.cli.answer.payback.PaybackWords}. */
package org.warmvat.cli.answer.payback;
