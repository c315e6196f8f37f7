/**
 * The main question: how does the tank fare in a year of weather (model section 10, year)?
 *
 * <p>Entry types: {@link org.warmvat.question.year.YearStudy} with everything hour by hour, {@link org.warmvat.question.year.BriefYear}
 * with the sums alone for runs by the thousand.
 */
package org.warmvat.question.year;
