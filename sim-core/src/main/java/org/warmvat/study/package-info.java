/**
 * Assembles a design into a network, runs it and answers the questions.
 *
 * <p>Entry types: {@link org.warmvat.study.YearStudy} for a run over a weather file, {@link org.warmvat.study.DerivedFigures}
 * for what can be said without one. The only package that knows all parts.
 */
package org.warmvat.study;
