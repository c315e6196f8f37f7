package org.warmvat.cli.answer;

import java.util.List;

/**
 * A table ready to print.
 *
 * @param caption what it shows
 * @param header heads of its columns
 * @param rows its cells, the first of each row being its name
 */
public record Table(String caption, List<String> header, List<List<String>> rows) {}
