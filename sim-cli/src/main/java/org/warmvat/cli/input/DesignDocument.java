package org.warmvat.cli.input;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.warmvat.design.Design;

/**
 * A design file that was read: the design, the defaults it uses, and the keys as written, so that single numbers can be exchanged.
 *
 * <p>Immutable; safe to share between threads.
 */
public final class DesignDocument {

    private final String name;
    private final ObjectNode written;
    private final ObjectNode filled;
    private final Design design;
    private final List<String> assumed;
    private final List<String> cautions;

    private DesignDocument(String name, ObjectNode written, ObjectNode filled, List<String> assumed, DesignFile file) {
        this.name = name;
        this.written = written;
        this.filled = filled;
        this.design = file.design();
        this.assumed = List.copyOf(assumed);
        this.cautions = file.cautions(design);
    }

    /**
     * Reads a design file, YAML or JSON.
     *
     * @param file the file
     * @throws InputRefused with every fault of the file, up to twenty
     */
    public static DesignDocument read(Path file) {
        return parse(file.toString(), SourceText.read(file));
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
        boolean json = name.endsWith(".json") || text.stripLeading().matches("(?s)\\{\\s*\".*");
        ObjectNode tree = json ? JsonText.read(text, lines, faults) : YamlText.read(text, lines, faults);
        if (tree.isEmpty()) {
            faults.refuseIfAny();
        }
        return bind(name, tree, faults);
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
        return DesignSchema.text();
    }

    /** The design. */
    public Design design() {
        return design;
    }

    /** The keys as written, as JSON that reads back as the same design; comments are lost. */
    public String json() {
        DefaultIndenter indent = new DefaultIndenter("  ", "\n");
        try {
            return new ObjectMapper()
                            .writer(new DefaultPrettyPrinter()
                                    .withObjectIndenter(indent)
                                    .withArrayIndenter(indent))
                            .writeValueAsString(written)
                    + "\n";
        } catch (JsonProcessingException impossible) {
            throw new UncheckedIOException(impossible);
        }
    }

    /** The file's name, with the exchanged numbers where there are any. */
    public String name() {
        return name;
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
     * The number a key has, by default or as written.
     *
     * @param path the key's path, such as {@code solar.area_m2}, {@code envelope.wall[1].thickness_mm} (counted from 0) or
     *     {@code envelope.wall[pir_foam].thickness_mm}, also {@code envelope.wall.pir_foam.thickness_mm} (by material or name)
     * @throws InputRefused when the design has no such number
     */
    public double number(String path) {
        return new NumberKey(name, path).in(filled);
    }

    /** One and the same text for all paths of a number: entries of lists by their place. */
    String place(String path) {
        return new NumberKey(name, path).placed(filled);
    }

    /**
     * The same design with one number exchanged and everything that follows from it.
     *
     * @param path the key's path as for {@link #number}; it need not stand in the file, but its block must
     * @param value the number
     * @throws InputRefused when there is no such number, or the design is not allowed with it
     */
    public DesignDocument with(String path, double value) {
        return with(Map.of(path, value));
    }

    /**
     * The same design with some numbers exchanged at once, so that only the whole must be allowed.
     *
     * @param numbers numbers by the paths of their keys, in the order in which messages name them
     * @throws InputRefused when there is no such number, or the design is not allowed with them
     */
    public DesignDocument with(Map<String, Double> numbers) {
        StringBuilder changedName = new StringBuilder(name);
        numbers.forEach((path, value) -> {
            changedName
                    .append(changedName.length() == name.length() ? " with " : ", ")
                    .append(path)
                    .append('=')
                    .append(Faults.number(value));
        });
        return with(numbers, changedName.toString());
    }

    /** The same under a name for messages. */
    DesignDocument with(Map<String, Double> numbers, String changedName) {
        ObjectNode changed = written.deepCopy();
        numbers.forEach((path, value) -> new NumberKey(name, path).set(changed, filled, value));
        return bind(changedName, changed, new Faults(changedName, Map.of()));
    }

    private static DesignDocument bind(String name, ObjectNode tree, Faults faults) {
        SchemaCheck.run(tree, faults);
        if (!faults.isEmpty()) {
            SoundPart.of(tree, faults).ifPresent(sound -> {
                faults.judgeSoundBlocksOnly();
                file(sound).check(faults);
            });
            faults.refuseIfAny();
        }
        ObjectNode filled = tree.deepCopy();
        List<String> assumed = Defaults.fill(filled);
        DesignFile file = file(filled);
        file.check(faults);
        faults.refuseIfAny();
        try {
            return new DesignDocument(name, tree, filled, assumed, file);
        } catch (IllegalArgumentException e) {
            // ranges and checks above are meant to come first; should one be missing, the record still has the last
            // word
            throw new InputRefused(List.of(name + ": " + e.getMessage()));
        }
    }

    private static DesignFile file(JsonNode filled) {
        return RecordBinder.bind(filled, DesignFile.class);
    }

    /** Paths of all numbers this design has, defaults included, in the order of the file's schema. */
    public List<String> numbers() {
        List<String> paths = new ArrayList<>();
        NumberKey.collect("", filled, paths);
        return List.copyOf(paths);
    }
}
