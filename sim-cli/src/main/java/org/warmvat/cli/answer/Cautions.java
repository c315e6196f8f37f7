package org.warmvat.cli.answer;

import java.util.List;
import java.util.Optional;
import org.warmvat.design.Design;

/** The cautions printed with every result. */
public final class Cautions {

    /** One caution a line; common practice, no source. */
    public static final List<String> ALL = List.of(
            "Biogas burns, and mixed with air it explodes: keep flames and sparks away, and air the place well.",
            "Biogas poisons (hydrogen sulphide, which dulls the sense of smell before it kills) and suffocates"
                    + " (carbon dioxide, methane): never enter a tank, a pit or a closed room around it without"
                    + " measuring, airing and a second person outside.",
            "Hot water and steam scald: a solar circuit can boil, so fit relief valves and guard hot pipes.",
            "Air dosed for desulphurisation must stay far below the explosive range, also when the tank makes little"
                    + " gas: stop the pump when gas stops.",
            "Local codes and rules for gas, electricity, pressure and water come first; have the work designed,"
                    + " checked and commissioned by licensed people.",
            "The figures are a calculation from the stated inputs, not a measurement, and no proof of safety.");

    /** All of them in one line, for a terminal. */
    public static final String SHORT =
            "Caution: biogas burns, explodes, poisons and suffocates, and hot water scalds. Follow local codes and leave the"
                    + " work to licensed people; these figures are a calculation, no proof of safety.";

    private Cautions() {}

    /** Those that apply. */
    static List<String> of(Optional<Design> design) {
        return ALL;
    }
}
