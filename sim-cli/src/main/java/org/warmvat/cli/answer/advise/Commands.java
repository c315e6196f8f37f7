package org.warmvat.cli.answer.advise;

import java.util.stream.Collectors;
import org.warmvat.cli.answer.InputFile;
import org.warmvat.cli.answer.Subject;
import org.warmvat.cli.words.Numerals;
import org.warmvat.question.advise.Recommendation;

/** The command that shows what a recommendation says. */
final class Commands {

    private final String design;
    private final String first;
    private final String all;

    Commands(Subject asked) {
        design = files(asked, "design");
        all = files(asked, "weather");
        first = asked.reading().files().stream()
                .filter(file -> file.role().equals("weather") && !isInvented(file))
                .map(Commands::shown)
                .findFirst()
                .orElse("");
    }

    private static String files(Subject asked, String role) {
        return asked.reading().files().stream()
                .filter(file -> file.role().equals(role) && !isInvented(file))
                .map(Commands::shown)
                .collect(Collectors.joining());
    }

    private static boolean isInvented(InputFile file) {
        return file.file().startsWith("built-in");
    }

    private static String shown(InputFile file) {
        return " "
                + (file.file().matches("[\\w./-]+")
                        ? file.file()
                        : "'" + file.file().replace("'", "'\\''") + "'");
    }

    String of(Recommendation recommendation) {
        return switch (recommendation.kind()) {
            case SLIP -> "warmvat check" + design + first;
            case HEATER, BACKUP_COIL -> "warmvat backup" + design + all + " --cold-spell 10";
            case FAILURE -> "warmvat hold" + design + first;
            case STAGNATION -> "warmvat year" + design + first;
            case INSULATION, COLLECTOR -> "warmvat year" + design + first + " --payback";
            case AIR, TOO_HOT, FROZEN_LOOP, FROZEN_PIPE, FITTING, SETPOINT, MIXER ->
                recommendation.change().map(this::varied).orElse("warmvat year" + design + first);
        };
    }

    private String varied(Recommendation.Change change) {
        return "warmvat vary" + design + first + " --set '" + change.key() + "="
                + Numerals.exact(change.from().orElseThrow()) + "," + Numerals.exact(change.to()) + "'";
    }
}
