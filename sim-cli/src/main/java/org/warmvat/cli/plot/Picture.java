package org.warmvat.cli.plot;

/**
 * A finished picture in two forms. The arrays are shared, not copied: read only.
 *
 * @param name file name without ending
 * @param title title, as it also stands in the picture
 * @param caption how to read it
 * @param svg the drawing as SVG, UTF-8
 * @param png the drawing as PNG
 */
@SuppressWarnings("ArrayRecordComponent") // handed through once from drawing to writing
public record Picture(String name, String title, String caption, byte[] svg, byte[] png) {}
