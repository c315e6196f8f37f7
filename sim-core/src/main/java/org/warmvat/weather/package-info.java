/**
 * Weather by the hour: the site, gap-free series, sky and ground temperature (model sections 2.6, 4.1, 4.3 and 4.6).
 *
 * <p>Entry type: {@link org.warmvat.weather.Weather}. Its files are read and written in {@code weather.file}, years are made
 * from monthly normals in {@code weather.made}, and {@code weather.doubt} looks for what is improbable. Left out: time steps
 * other than an hour, daylight saving, rain and snow.
 */
package org.warmvat.weather;
