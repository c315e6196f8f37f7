/**
 * The only thing that adds up: what the meters of a network counted becomes hours, days, months, the whole run, balances and warnings, by
 * what the parts declared of them.
 *
 * <p>Entry types: {@link org.warmvat.account.Account} listens to a run, {@link org.warmvat.account.Period} holds the lines of a span.
 * Left out: which parts there are, prices, and words beyond what the parts say themselves.
 */
package org.warmvat.account;
