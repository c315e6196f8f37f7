package org.warmvat.cli.plot;

import java.awt.Color;
import java.awt.Stroke;

/**
 * How a line is drawn.
 *
 * @param colour its colour
 * @param stroke its width and dashes
 */
record LineStyle(Color colour, Stroke stroke) {}
