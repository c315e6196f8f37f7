/**
 * Weather by the hour: the site, gap-free series, sky and ground temperature, and the files they come from (model
 * sections 2.6, 4.1, 4.3 and 4.6).
 *
 * <p>Entry types: {@link org.warmvat.weather.WeatherFiles} reads, {@link org.warmvat.weather.Weather} answers. Left out:
 * time steps other than an hour, daylight saving, rain and snow.
 */
package org.warmvat.weather;
