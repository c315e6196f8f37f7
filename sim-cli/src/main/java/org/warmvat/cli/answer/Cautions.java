package org.warmvat.cli.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.warmvat.cli.words.Words;
import org.warmvat.design.Design;
import org.warmvat.design.heating.BackupCircuit;
import org.warmvat.design.heating.BackupSource;
import org.warmvat.design.surroundings.Place;

/**
 * The one text of cautions, from which each answer takes those that apply to its design. All are common practice, no source; local
 * codes and licensed trades come before them.
 */
final class Cautions {

    /** For a terminal. */
    static final String SHORT =
            "Caution: biogas burns, explodes, poisons and suffocates; hot water scalds; never enter a tank. Local codes and licensed"
                    + " trades come first. The figures are a calculation, no proof of safety. The report has all cautions.";

    private static final String NO_PROOF =
            "The figures are a calculation from the stated inputs, not a measurement, and no proof of safety.";

    private static final List<String> OF_ANY_TANK = List.of(
            "Local codes for gas, electricity, pressure, water and waste come first; have the work designed, checked and"
                    + " commissioned by licensed trades.",
            "Never enter a tank, a pit or a closed room around it: biogas poisons (hydrogen sulphide dulls the sense of smell"
                    + " before it kills) and suffocates. Entry is for trained crews with rescue equipment only.",
            "Biogas burns, and mixed with air it explodes: keep flames, sparks, smoking and unprotected electrical parts away"
                    + " from tank, gas line and vents, and air the place well.",
            "The first fill, a restart from cold and emptying pass through mixtures of gas and air that explode: keep ignition"
                    + " sources away and dose no air until the gas burns steadily.",
            "A gas space that cools or is emptied pulls a vacuum, and one that is shut in builds up pressure: fit protection"
                    + " against both that no valve can shut off and no frost can block.",
            "Feed and slurry carry germs: wear gloves, wash, keep food and animals away; what leaves the tank is not free of"
                    + " germs unless it was heated long enough.",
            "Augers, shredders and mixers crush: fit guards, and lock the power off before you reach in.");

    private Cautions() {}

    /** Those that apply. */
    static List<String> of(Optional<Design> design) {
        List<String> cautions = new ArrayList<>();
        design.ifPresent(tank -> {
            cautions.addAll(OF_ANY_TANK);
            cautions.add(weight(tank));
            heat(tank, cautions);
            gas(tank, cautions);
            place(tank, cautions);
        });
        cautions.add(NO_PROOF);
        return List.copyOf(cautions);
    }

    private static String weight(Design tank) {
        double kg = tank.tank().liquidVolumeM3() * tank.contents().densityKgPerM3();
        return "The contents alone weigh about " + Words.number(kg)
                + " kg: legs, base and floor must bear them with a margin, and a tank on legs must not tip.";
    }

    private static void heat(Design tank, List<String> cautions) {
        if (tank.solar().isPresent() || tank.backup().isPresent()) {
            cautions.add(
                    "Hot water and steam scald: fit relief valves that blow off where nobody stands, and guard hot pipes.");
        }
        if (tank.solar().isPresent()) {
            cautions.add(
                    "A solar loop boils when its pump stands in the sun, and bursts when it freezes: fluid, valves and pipes"
                            + " must bear the highest and the lowest temperature. Tested values of the collector's certificate go"
                            + " before those computed here.");
        }
        if (tank.backup()
                .map(BackupCircuit::through)
                .filter(BackupCircuit.Immersed.class::isInstance)
                .isPresent()) {
            cautions.add(
                    "A heating element in the slurry must never run dry and bakes slurry on; it needs protection against"
                            + " earth leakage and a limiter of its own, all the more in a shell that does not conduct.");
        }
        if (tank.backup()
                .map(BackupCircuit::source)
                .filter(BackupSource.OWN_GAS::equals)
                .isPresent()) {
            cautions.add(
                    "A burner for the tank's own gas needs flame supervision, a flame arrester, a flue and a gas that is"
                            + " freed of hydrogen sulphide; a licensed gas fitter sets it up.");
        }
    }

    private static void gas(Design tank, List<String> cautions) {
        tank.gas()
                .flatMap(gas -> gas.airDosing())
                .ifPresent(dosing -> cautions.add(
                        "Air dosed against hydrogen sulphide must stay far below the explosive range, also when the tank makes little"
                                + " gas: stop the pump when the gas stops."));
        tank.gas()
                .flatMap(gas -> gas.holder())
                .ifPresent(holder -> cautions.add(
                        "Gas that a full holder cannot take goes to a flare, never into a room or under a roof."));
    }

    private static void place(Design tank, List<String> cautions) {
        if (!(tank.tank().place() instanceof Place.Outdoors)) {
            cautions.add(
                    "In a room or under a cover a small leak makes the air explosive or poisonous: airing to the outside,"
                            + " gas detectors outside the tank, nobody asleep above or beside it; many codes forbid such a place.");
        }
        if (tank.mixer().minutesPerHour() < 60) {
            cautions.add(
                    "A mixer that stands lets straw and grass rise: within about a day a crust may form that can seem to carry"
                            + " a man and under which gas cannot escape, so that the pressure rises.");
        }
    }
}
