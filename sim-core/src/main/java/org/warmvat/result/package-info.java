/**
 * What a run found, as plain records: hourly series, figures of a period (day, month, year), warnings.
 *
 * <p>Entry type: {@link org.warmvat.result.RunResult}. Energies are in kWh, temperatures in °C, powers in W. Losses are
 * positive where the name says loss. Left out: files and pictures, which belong to the command line.
 */
package org.warmvat.result;
