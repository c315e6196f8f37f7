/**
 * Numbers of the design over lists or ranges: what each combination gives, which are beaten by none, and what volume makes as much
 * gas.
 *
 * <p>Entry types: {@link org.warmvat.question.vary.VaryStudy}, {@link org.warmvat.question.vary.Grid}, {@link
 * org.warmvat.question.vary.Pareto}, {@link org.warmvat.question.vary.GasByVolume}.
 */
package org.warmvat.question.vary;
