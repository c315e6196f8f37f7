/**
 * What a run counts: meters with their lines, balances and units, and what follows from them, declared where a part makes them.
 *
 * <p>Entry type: {@link org.warmvat.network.meter.Declarations}.
 */
package org.warmvat.network.meter;
