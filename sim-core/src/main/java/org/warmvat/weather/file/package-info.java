/**
 * Weather files and files of monthly normals: from text to rows, from rows to an unbroken row of hours, and back to text.
 *
 * <p>Entry types: {@link org.warmvat.weather.file.WeatherFiles} reads, {@link org.warmvat.weather.file.WarmvatCsvText} writes. A
 * fault names file, line, what was found and what is allowed.
 */
package org.warmvat.weather.file;
