/**
 * Many designs side by side: which are beaten by none, and what volume makes as much gas.
 *
 * <p>Entry types: {@link org.warmvat.question.vary.Pareto}, {@link org.warmvat.question.vary.GasByVolume}.
 */
package org.warmvat.question.vary;
