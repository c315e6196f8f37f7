package org.warmvat.cli.answer;

import java.util.ArrayList;
import java.util.List;
import org.warmvat.design.BackupSource;
import org.warmvat.design.Design;
import org.warmvat.heating.BackupPart;
import org.warmvat.heating.SolarPart;
import org.warmvat.question.year.YearResult;
import org.warmvat.tank.Housekeeping;

/** What the sun gave and the backup had to give, in all and by season. */
final class HeatSentences {

    private HeatSentences() {}

    static List<String> of(YearResult run, Findings findings, Span span) {
        List<String> sentences = new ArrayList<>();
        sentences.add(total(run, span));
        if (run.design().solar().isPresent() || run.design().backup().isPresent()) {
            findings.seasons().forEach(season -> sentences.add(season(season, run.design())));
        }
        run.design()
                .backup()
                .ifPresent(backup ->
                        sentences.add(bought(backup.source(), run.whole().of(BackupPart.BOUGHT))));
        return sentences;
    }

    private static String total(YearResult run, Span span) {
        double solarKWh = run.whole().of(SolarPart.HEAT);
        double backupKWh = run.whole().of(BackupPart.HEAT);
        Design design = run.design();
        String over = Character.toUpperCase(span.over().charAt(0)) + span.over().substring(1);
        if (design.solar().isPresent() && design.backup().isPresent()) {
            return over + " the sun gave " + Words.kWh(solarKWh) + " of heat and the backup heater "
                    + Words.kWh(backupKWh) + share(run) + ".";
        }
        if (design.solar().isPresent()) {
            return over + " the sun gave " + Words.kWh(solarKWh) + " of heat; there is no backup heater.";
        }
        if (design.backup().isPresent()) {
            return over + " the backup heater gave " + Words.kWh(backupKWh) + " of heat; there is no solar circuit.";
        }
        return "There is neither a solar circuit nor a backup heater.";
    }

    private static String share(YearResult run) {
        double share = run.whole().of(Housekeeping.SOLAR_SHARE);
        return Double.isNaN(share) ? "" : "; the sun's share of the two was " + Words.percent(share);
    }

    private static String season(Season season, Design design) {
        List<String> gave = new ArrayList<>();
        if (design.solar().isPresent()) {
            gave.add("the sun gave " + Words.kWh(season.solarKWh()));
        }
        if (design.backup().isPresent()) {
            gave.add("the backup " + (design.solar().isPresent() ? "" : "gave ") + Words.kWh(season.backupKWh()));
        }
        return "In " + season.when() + " " + Words.list(gave) + ".";
    }

    private static String bought(BackupSource source, double kWh) {
        return switch (source) {
            case ELECTRIC -> "For its heat the backup drew " + Words.kWh(kWh) + " of electricity.";
            case OWN_GAS -> "For its heat the backup burned " + Words.kWh(kWh) + " of the tank's own gas.";
            case FUEL -> "For its heat the backup burned " + Words.kWh(kWh) + " of bought fuel.";
        };
    }
}
