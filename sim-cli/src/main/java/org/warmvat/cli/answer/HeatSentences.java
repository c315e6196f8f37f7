package org.warmvat.cli.answer;

import java.util.ArrayList;
import java.util.List;
import org.warmvat.result.BoughtEnergy;
import org.warmvat.result.Heats;
import org.warmvat.result.Marks;
import org.warmvat.result.RunResult;

/** What the sun gave and the backup had to give, in all and by season. */
final class HeatSentences {

    private HeatSentences() {}

    static List<String> of(RunResult run, Findings findings, Span span) {
        List<String> sentences = new ArrayList<>();
        sentences.add(total(run, span));
        if (run.marks().hasSolar() || run.marks().hasBackup()) {
            findings.seasons().forEach(season -> sentences.add(season(season, run.marks())));
        }
        run.marks()
                .backup()
                .ifPresent(source ->
                        sentences.add(bought(source, run.year().circuits().backupBoughtKWh())));
        return sentences;
    }

    private static String total(RunResult run, Span span) {
        Heats heats = run.year().heats();
        Marks marks = run.marks();
        String over = Character.toUpperCase(span.over().charAt(0)) + span.over().substring(1);
        if (marks.hasSolar() && marks.hasBackup()) {
            return over + " the sun gave " + Words.kWh(heats.solarKWh()) + " of heat and the backup heater "
                    + Words.kWh(heats.backupKWh()) + share(run) + ".";
        }
        if (marks.hasSolar()) {
            return over + " the sun gave " + Words.kWh(heats.solarKWh()) + " of heat; there is no backup heater.";
        }
        if (marks.hasBackup()) {
            return over + " the backup heater gave " + Words.kWh(heats.backupKWh())
                    + " of heat; there is no solar circuit.";
        }
        return "There is neither a solar circuit nor a backup heater.";
    }

    private static String share(RunResult run) {
        return run.year().solarShare().stream()
                .mapToObj(share -> "; the sun's share of the two was " + Words.percent(share))
                .findFirst()
                .orElse("");
    }

    private static String season(Season season, Marks marks) {
        List<String> gave = new ArrayList<>();
        if (marks.hasSolar()) {
            gave.add("the sun gave " + Words.kWh(season.solarKWh()));
        }
        if (marks.hasBackup()) {
            gave.add("the backup " + (marks.hasSolar() ? "" : "gave ") + Words.kWh(season.backupKWh()));
        }
        return "In " + season.when() + " " + Words.list(gave) + ".";
    }

    private static String bought(BoughtEnergy source, double kWh) {
        return switch (source) {
            case ELECTRICITY -> "For its heat the backup drew " + Words.kWh(kWh) + " of electricity.";
            case OWN_GAS -> "For its heat the backup burned " + Words.kWh(kWh) + " of the tank's own gas.";
            case FUEL -> "For its heat the backup burned " + Words.kWh(kWh) + " of bought fuel.";
        };
    }
}
