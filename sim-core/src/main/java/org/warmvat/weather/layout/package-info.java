/**
 * How a text of rows by the hour is laid out: lines and cells, times, columns with their units, and where the site's data stand.
 *
 * <p>Entry type: {@link org.warmvat.weather.layout.Layout}.
 */
package org.warmvat.weather.layout;
