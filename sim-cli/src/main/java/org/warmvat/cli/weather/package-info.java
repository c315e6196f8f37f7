/**
 * The commands that look at, convert and make weather files.
 *
 * <p>Entry type: {@link org.warmvat.cli.weather.WeatherCommand}.
 */
package org.warmvat.cli.weather;
