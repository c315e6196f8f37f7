/**
 * Times as a design states them: spells of the calendar, windows and stretches of the day, the minimum temperature by spell.
 *
 * <p>Entry type: {@link org.warmvat.design.season.SeasonTable}. Records are valid from birth; the whole is {@link org.warmvat.design.Design}.
 */
package org.warmvat.design.season;
