package org.warmvat.cli.file;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Consumer;
import java.util.function.Function;
import org.warmvat.design.Design;
import org.warmvat.design.gas.Gas;
import org.warmvat.design.keys.Findings;
import org.warmvat.design.keys.Refused;
import org.warmvat.design.keys.Shown;
import org.warmvat.design.surroundings.Place;

/**
 * A design file that was read: the design, the defaults it uses, and what deserves a word.
 *
 * <p>Immutable; safe to share between threads.
 */
public final class DesignDocument {

    private static final double METHANE_KWH_PER_NM3 = 35.8 / 3.6;
    private static final String TOTAL_SOLIDS = "total_solids";

    private static final double MINUTES_PER_HOUR = 60;

    /** Difference of solids fractions from which it is warned: about what moves the heat capacity by one per cent. */
    private static final double FAR = 0.02;

    private final String name;
    private final ObjectNode tree;
    private final Design design;
    private final List<String> assumed;
    private final List<String> cautions;

    private DesignDocument(String name, ObjectNode tree, Design design, List<String> assumed, List<String> cautions) {
        this.name = name;
        this.tree = tree;
        this.design = design;
        this.assumed = List.copyOf(assumed);
        this.cautions = List.copyOf(cautions);
    }

    /**
     * Reads the bytes of a design file, YAML or JSON.
     *
     * @param name name for messages; one that ends in {@code .json} is read as JSON
     * @param bytes UTF-8 text, with or without a byte order mark
     * @throws InputRefused with every fault, up to twenty
     */
    public static DesignDocument read(String name, byte[] bytes) {
        return parse(name, SourceText.decode(name, bytes));
    }

    /**
     * Reads the text of a design, YAML or JSON.
     *
     * @param name name for messages; one that ends in {@code .json} is read as JSON
     * @param text the text
     * @throws InputRefused with every fault, up to twenty
     */
    public static DesignDocument parse(String name, String text) {
        Map<String, Integer> lines = new HashMap<>();
        Faults faults = new Faults(name, lines);
        ObjectNode tree = tree(name, text, lines, faults);
        if (tree.isEmpty()) {
            faults.refuseIfAny();
        }
        return of(name, tree, faults);
    }

    /** The design that a tree of keys says; what is wrong with it is added to the faults of reading it. */
    static DesignDocument of(String name, ObjectNode given, Faults faults) {
        ObjectNode tree = withOneTotalSolids(given, faults);
        SchemaCheck.run(FileSchema.DESIGN, tree, faults);
        faults.judgeSoundBlocksOnly();
        DesignFindings findings = new DesignFindings(faults);
        Design design = design(tree, findings, faults);
        checkUses(design, faults);
        faults.refuseIfAny();
        List<String> cautions = new ArrayList<>(doubts(design));
        cautions.addAll(findings.cautions());
        return new DesignDocument(name, tree, design, taken(findings.assumed(), design), cautions);
    }

    /** {@code tank.total_solids} is {@code contents.total_solids} by another name. */
    private static ObjectNode withOneTotalSolids(ObjectNode given, Faults faults) {
        JsonNode twin = given.path("tank").path(TOTAL_SOLIDS);
        JsonNode contents = given.path("contents");
        if (twin.isMissingNode() || !(contents.isMissingNode() || contents.isNull() || contents.isObject())) {
            return given;
        }
        String twinPath = "tank." + TOTAL_SOLIDS;
        String path = "contents." + TOTAL_SOLIDS;
        ObjectNode tree = given.deepCopy();
        ((ObjectNode) tree.get("tank")).remove(TOTAL_SOLIDS);
        ObjectNode block = tree.get("contents") instanceof ObjectNode own ? own : tree.putObject("contents");
        JsonNode other = block.path(TOTAL_SOLIDS);
        if (other.isMissingNode()) {
            block.set(TOTAL_SOLIDS, twin);
            faults.standsAt(path, twinPath);
        } else if (!other.isNumber() || !twin.isNumber() || other.asDouble() != twin.asDouble()) {
            faults.add(twinPath, twin + " beside " + path + " " + other + ", expected one of them: both mean the same");
        }
        return tree;
    }

    /**
     * Whether a text is read as JSON.
     *
     * @param name its name, which decides where it ends in {@code .json}
     */
    public static boolean isJson(String name, String text) {
        return name.endsWith(".json") || text.stripLeading().matches("(?s)\\{\\s*\".*");
    }

    /** The keys and values of a text, be the values allowed or not. */
    static ObjectNode tree(String name, String text, Map<String, Integer> lines, Faults faults) {
        return isJson(name, text) ? JsonText.read(text, lines, faults) : YamlText.read(text, lines, faults);
    }

    @SuppressWarnings("unchecked") // keys of a file are texts
    private static Map<String, ?> texts(Object tree) {
        return (Map<String, ?>) tree;
    }

    /** A warning where the given solids are far from what feed and digestion lead to. */
    private static List<String> doubts(Design design) {
        double steady = design.steadyTotalSolidsFraction();
        return design
                .contents()
                .totalSolidsFraction()
                .filter(given -> Math.abs(given - steady) > FAR)
                .map(given -> String.format(
                        Locale.ROOT,
                        "contents.total_solids %s is far from %.3f, which feed and digestion at the set-point lead to",
                        Shown.number(given),
                        steady))
                .stream()
                .toList();
    }

    /** The design; what is wrong with the file goes before what nothing could be made of. */
    private static Design design(ObjectNode tree, DesignFindings findings, Faults faults) {
        try {
            return Design.of(texts(PlainTree.of(tree)), findings);
        } catch (Refused nothingMade) {
            faults.refuseIfAny();
            throw nothingMade;
        }
    }

    /** Of a default that hangs on another key what was taken. */
    private static List<String> taken(List<String> assumed, Design design) {
        return assumed.stream()
                .map(sentence -> sentence.startsWith("tank.exposure_factor not given: ")
                                && design.tank().place() instanceof Place.Outdoors outdoors
                        ? "tank.exposure_factor not given: " + Shown.number(outdoors.windFactor()) + ", by place ("
                                + outdoors.exposure().name().toLowerCase(Locale.ROOT) + ")"
                        : sentence)
                .toList();
    }

    /** A use that a full holder could not serve for a minute is a slip. */
    private static void checkUses(Design design, Faults faults) {
        Gas gas = design.gas().filter(some -> some.holder().isPresent()).orElse(null);
        for (int i = 0; gas != null && i < gas.uses().size(); i++) {
            double mostKw =
                    gas.holder().get().fullNm3() * gas.methaneFraction() * METHANE_KWH_PER_NM3 * MINUTES_PER_HOUR;
            if (gas.uses().get(i).kw() > mostKw) {
                faults.add(
                        "gas.uses[" + i + "].kw",
                        Shown.number(gas.uses().get(i).kw()) + ", expected at most " + Shown.number(Math.floor(mostKw))
                                + " kW: it would empty the full holder in less than a minute");
            }
        }
    }

    /** The built-in demonstration: an invented garden's 900 litre tank. */
    public static DesignDocument demonstration() {
        return read("built-in demonstration design", demonstrationBytes());
    }

    /** The file of the built-in demonstration, UTF-8 YAML. */
    public static byte[] demonstrationBytes() {
        try (InputStream in = DesignDocument.class.getResourceAsStream("demonstration.yaml")) {
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The JSON Schema of the design file. */
    public static String schema() {
        return FileSchema.DESIGN.text();
    }

    /** The design. */
    public Design design() {
        return design;
    }

    /** The keys of a design's text as JSON that reads back as the same design; comments are lost. */
    public static String json(String name, String text) {
        return PlainTree.pretty(FileTree.read(name, text).keys());
    }

    /** Every default that is used, one sentence each. */
    public List<String> assumed() {
        return assumed;
    }

    /** What is allowed but deserves a word, one sentence each. */
    public List<String> cautions() {
        return cautions;
    }

    /**
     * The design of the file with some of its keys set: words in the file itself, which is then read anew, and numbers in what was read.
     *
     * @param set numbers and words by the paths of their keys
     * @throws Refused when there is no such number or word, or the design is not allowed with them
     */
    Design set(Map<String, Object> set) {
        Map<String, Double> numbers = new LinkedHashMap<>();
        ObjectNode changed = tree.deepCopy();
        set.forEach((path, value) -> {
            if (value instanceof Number number) {
                numbers.put(path, number.doubleValue());
            } else {
                PlainTree.put(changed, path, (String) value);
            }
        });
        Design base = changed.equals(tree) ? design : Design.of(texts(PlainTree.of(changed)), Findings.strict());
        return numbers.isEmpty() ? base : base.with(numbers);
    }

    /**
     * Asks about the design.
     *
     * @param question throws {@link Refused} where it cannot be asked of this design
     * @throws InputRefused with what was refused, under the file's name
     */
    public <T> T ask(Function<Design, T> question) {
        try {
            return question.apply(design);
        } catch (Refused refused) {
            throw new InputRefused(
                    refused.faults().stream().map(fault -> name + ": " + fault).toList());
        }
    }

    /** The same where nothing but the refusal matters. */
    public void judge(Consumer<Design> check) {
        ask(asked -> {
            check.accept(asked);
            return asked;
        });
    }
}
