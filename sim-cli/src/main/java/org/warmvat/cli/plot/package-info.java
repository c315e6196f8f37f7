/**
 * The pictures of a run, drawn for print in grey and for colour-blind eyes: colours differ in lightness, areas also in
 * hatching, lines also in their strokes.
 *
 * <p>Entry type: {@link org.warmvat.cli.plot.Pictures}. Left out: files and pages; a picture is handed over as bytes. Only this
 * package knows the chart library.
 */
package org.warmvat.cli.plot;
