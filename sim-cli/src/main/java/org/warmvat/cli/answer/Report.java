package org.warmvat.cli.answer;

import java.nio.charset.StandardCharsets;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.warmvat.cli.plot.Picture;
import org.warmvat.question.year.YearResult;

/** Turns a run into the files of its results folder. The same run gives the same bytes. */
public final class Report {

    private Report() {}

    /** Names of all files that a results folder may hold. */
    public static Set<String> fileNames() {
        Set<String> names =
                new HashSet<>(Set.of("report.html", "summary.json", "hourly.csv", "daily.csv", "monthly.csv"));
        for (String picture : YearPictures.NAMES) {
            names.add(picture + ".png");
            names.add(picture + ".svg");
        }
        return names;
    }

    /**
     * The files by name.
     *
     * @param run the run
     * @param payback whether more foam or collector would pay, empty where it was not asked
     * @param origin what it was made from
     * @param pictures its pictures, none where they could not be drawn
     */
    public static Map<String, byte[]> files(
            YearResult run, Optional<YearPayback> payback, Origin origin, List<Picture> pictures) {
        Findings findings = Findings.of(run).with(payback);
        Map<String, byte[]> files = new LinkedHashMap<>();
        files.put(
                "report.html",
                ReportPage.of(run, findings, origin, pictures).html().getBytes(StandardCharsets.UTF_8));
        files.put("summary.json", SummaryJson.of(run, findings, origin));
        files.put("hourly.csv", HourlyCsv.of(run.hourly()));
        files.put("daily.csv", PeriodCsv.of("day", run.days()));
        files.put("monthly.csv", PeriodCsv.of("month", run.months()));
        for (Picture picture : pictures) {
            files.put(picture.name() + ".png", picture.png());
            files.put(picture.name() + ".svg", picture.svg());
        }
        return files;
    }

    /** {@code summary.json} by itself. */
    public static byte[] summary(YearResult run, Optional<YearPayback> payback, Origin origin) {
        return SummaryJson.of(run, Findings.of(run).with(payback), origin);
    }
}
