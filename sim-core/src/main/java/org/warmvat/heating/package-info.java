/**
 * The two heating circuits, each with its own state, coil and control; they never exchange heat except through the slurry
 * (model sections 5 and 6).
 *
 * <p>Entry types: {@link org.warmvat.heating.SolarPart}, {@link org.warmvat.heating.BackupPart}. Left out: stratification in
 * the loop, thermosiphoning while the pump stands still.
 */
package org.warmvat.heating;
