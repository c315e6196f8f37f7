package org.warmvat.cli.answer;

import java.util.List;
import java.util.Map;
import org.warmvat.cli.plot.Drawing;

/**
 * What a study found, ready to be told: in sentences, tables, pictures and figures.
 *
 * @param command name of the command
 * @param title title of the design with the question
 * @param subtitle tank, weather, engine
 * @param answer the answer in plain sentences
 * @param tables tables of the page and the terminal
 * @param figures every figure under its key: numbers, text, truth, lists and further maps; null for what is not there
 * @param csv contents of the CSV files by file name
 * @param pictures its pictures, not drawn yet
 * @param warnings what the user must know
 * @param assumed defaults and assumptions used
 */
public record StudyResults(
        String command,
        String title,
        String subtitle,
        List<Paragraph> answer,
        List<Table> tables,
        Map<String, Object> figures,
        Map<String, byte[]> csv,
        List<Drawing> pictures,
        List<String> warnings,
        List<String> assumed) {}
