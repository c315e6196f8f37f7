package org.warmvat.cli.plot;

import org.jfree.chart.JFreeChart;

/**
 * A chart ready to be rendered.
 *
 * @param name file name without ending
 * @param title title
 * @param caption how to read it
 * @param chart the chart
 * @param heightPx its height
 */
record Drawing(String name, String title, String caption, JFreeChart chart, int heightPx) {}
