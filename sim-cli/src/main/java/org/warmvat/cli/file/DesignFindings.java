package org.warmvat.cli.file;

import java.util.ArrayList;
import java.util.List;
import org.warmvat.design.keys.Findings;
import org.warmvat.design.keys.Refused;

/** What reading a design file finds: faults with their lines, defaults that are used, keys without effect. */
final class DesignFindings implements Findings {

    private final Faults faults;
    private final List<String> assumed = new ArrayList<>();
    private final List<String> cautions = new ArrayList<>();

    DesignFindings(Faults faults) {
        this.faults = faults;
    }

    /** Every default that is used, one sentence each. */
    List<String> assumed() {
        return assumed;
    }

    /** What has no effect, one sentence each. */
    List<String> cautions() {
        return cautions;
    }

    @Override
    public boolean faulty(String path) {
        return faults.isFaulty(path);
    }

    @Override
    public void missing(String path, String reason) {
        String why = reason.isEmpty() ? "" : " (" + reason + ")";
        faults.add(path, "is missing, expected " + Expectation.of(FileSchema.DESIGN, FileSchema.DESIGN.at(path)) + why);
    }

    @Override
    public void wrong(Refused.Fault fault) {
        faults.add(fault.key(), fault.text(), fault.restsOn().toArray(String[]::new));
    }

    @Override
    public void assumed(String path, String words) {
        assumed.add(path + " not given: " + spelt(words));
    }

    /** Units as results spell them; those of keys stay. */
    private static String spelt(String words) {
        return words.replace("Nm3", "Nm³")
                .replaceAll("(?<![_A-Za-z0-9])m2", "m²")
                .replaceAll("(?<![_A-Za-z0-9])m3", "m³")
                .replaceAll("(?<=[0-9]) C(?![A-Za-z])", " °C");
    }

    @Override
    public void idle(String path, String reason) {
        cautions.add(path + "." + reason);
    }
}
