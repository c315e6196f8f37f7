package org.warmvat.cli.answer;

import java.util.List;

/**
 * What made a report, and from what.
 *
 * @param version version of the program
 * @param inputs inputs in the order of the command line
 */
public record Origin(String version, List<InputFile> inputs) {}
