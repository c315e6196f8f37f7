package org.warmvat.cli.file;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.warmvat.design.keys.Findings;
import org.warmvat.design.keys.Refused;

/** What reading a design file finds: faults with their lines, defaults that are used, keys without effect. */
final class DesignFindings implements Findings {

    private static final Pattern SQUARE = Pattern.compile("(?<![_A-Za-z0-9])m2");
    private static final Pattern CUBIC = Pattern.compile("(?<![_A-Za-z0-9])m3");
    private static final Pattern CELSIUS = Pattern.compile("(?<=[0-9]) C(?![A-Za-z])");

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
    static String spelt(String words) {
        String cubic = CUBIC.matcher(words.replace("Nm3", "Nm³")).replaceAll("m³");
        return CELSIUS.matcher(SQUARE.matcher(cubic).replaceAll("m²")).replaceAll(" °C");
    }

    @Override
    public void idle(String path, String reason) {
        cautions.add(path + "." + reason);
    }
}
