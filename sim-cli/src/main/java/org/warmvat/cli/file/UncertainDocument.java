package org.warmvat.cli.file;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.warmvat.design.Design;
import org.warmvat.design.keys.Shown;
import org.warmvat.question.spread.Uncertain;
import org.warmvat.question.spread.UncertainTank;
import org.warmvat.sampling.Spread;

/** Reads files of uncertain inputs, YAML or JSON: which numbers of a design are not known well, and how far they may lie. */
public final class UncertainDocument {

    private static final FileSchema SCHEMA = FileSchema.shipped("uncertain.schema.json");
    private static final String PROPOSAL = "uncertain.yaml";
    private static final int MOST_INPUTS = 100;

    private final ObjectNode tree;
    private final Faults faults;

    private UncertainDocument(String name, String text) {
        FileTree file = FileTree.read(name, text).checked(SCHEMA);
        tree = file.keys();
        faults = file.faults();
    }

    /**
     * Reads the bytes of such a file.
     *
     * @param name name for messages; one that ends in {@code .json} is read as JSON
     * @param bytes UTF-8 text
     * @param design whose numbers they are
     * @throws InputRefused with every fault, up to twenty
     */
    public static List<Uncertain> read(String name, byte[] bytes, Design design) {
        UncertainDocument document = new UncertainDocument(name, SourceText.decode(name, bytes));
        List<Uncertain> inputs = document.inputs();
        document.check(inputs, design);
        document.faults.refuseIfAny();
        return inputs;
    }

    /** The proposal, as far as a design has its inputs. */
    public static List<Uncertain> proposal(Design design) {
        return new UncertainDocument(PROPOSAL, SourceText.shipped(PROPOSAL))
                .inputs().stream()
                        .filter(input -> UncertainTank.fault(design, input).isEmpty())
                        .toList();
    }

    private List<Uncertain> inputs() {
        List<Uncertain> inputs = new ArrayList<>();
        tree.properties()
                .forEach(entry -> input(entry.getKey(), entry.getValue()).ifPresent(inputs::add));
        return inputs;
    }

    private Optional<Uncertain> input(String key, JsonNode block) {
        double low = block.path("low").asDouble();
        double high = block.path("high").asDouble();
        boolean times = block.path("times").asBoolean(false);
        if (low >= high) {
            faults.add(key + ".low", Shown.number(low) + ", expected a number below high " + Shown.number(high));
            return Optional.empty();
        }
        if (times && low < 0) {
            faults.add(key + ".low", Shown.number(low) + ", expected a factor of 0 or more");
        }
        if (times && key.equals(Uncertain.AIR_OFFSET)) {
            faults.add(key + ".times", "true, expected kelvins: the weather file's air has no offset to multiply");
        }
        boolean even = block.path("shape").asText().equals("even");
        return Optional.of(
                new Uncertain(key, new Spread(low, high, even ? Spread.Shape.EVEN : Spread.Shape.NORMAL), times));
    }

    private void check(List<Uncertain> inputs, Design design) {
        if (tree.isEmpty() || inputs.size() > MOST_INPUTS) {
            faults.addAtLine(1, inputs.size() + " inputs, expected 1 to " + MOST_INPUTS);
        }
        Map<String, String> taken = new LinkedHashMap<>();
        for (Uncertain input : inputs) {
            Optional<String> fault = UncertainTank.fault(design, input);
            fault.ifPresent(text -> faults.add(input.key(), text));
            for (String place : fault.isEmpty() ? UncertainTank.places(design, input) : List.<String>of()) {
                String first = taken.putIfAbsent(place, input.key());
                if (first != null) {
                    faults.add(input.key(), "leads to the same number as " + first + ", expected one of them");
                }
            }
        }
    }
}
