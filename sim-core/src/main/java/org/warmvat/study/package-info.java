/**
 * Assembles a design into a network, runs it and answers the questions.
 *
 * <p>Entry types: {@link org.warmvat.study.YearStudy} for a run over a weather file, {@link org.warmvat.tank.DerivedFigures}
 * for what can be said without one, {@link org.warmvat.tank.Runner} with {@link org.warmvat.study.Parallel} for any number of
 * runs, {@link org.warmvat.study.Variations} for designs with one thing changed. The only package that knows all parts.
 */
package org.warmvat.study;
