package org.warmvat.cli.file;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.warmvat.design.Design;

/** A design file's own text, comments and all, with other factors under {@code adjust}. */
public final class AdjustedText {

    private static final String BLOCK = "adjust";
    private static final List<String> FACTORS =
            List.of("envelope", "fittings", "capacity", "solar_coil", "backup_coil", "collector");
    private static final String BYTE_ORDER_MARK = "\uFEFF";
    private static final MathContext FOUR_DIGITS = new MathContext(4);

    private AdjustedText() {}

    /**
     * The text of a design with the factors of another.
     *
     * @param text a design file that was read
     * @param adjusted the same design with other factors
     * @return YAML, or JSON where the text is JSON
     */
    public static String of(String text, Design adjusted) {
        Map<String, BigDecimal> factors = new LinkedHashMap<>();
        for (String factor : FACTORS) {
            double value = adjusted.number(BLOCK + "." + factor);
            if (value != 1) {
                factors.put(factor, new BigDecimal(value).round(FOUR_DIGITS).stripTrailingZeros());
            }
        }
        String own = text.startsWith(BYTE_ORDER_MARK) ? text.substring(1) : text;
        return own.stripLeading().startsWith("{") ? json(own, factors) : yaml(own, factors);
    }

    /** JSON is YAML, so that braces are read as both. */
    private static String json(String text, Map<String, BigDecimal> factors) {
        ObjectMapper mapper = new ObjectMapper();
        ObjectNode tree = YamlText.read(text, new HashMap<>(), new Faults("design", Map.of()));
        tree.set(BLOCK, mapper.valueToTree(factors));
        try {
            return mapper.writerWithDefaultPrettyPrinter().writeValueAsString(tree) + "\n";
        } catch (JsonProcessingException impossible) {
            throw new IllegalStateException("a design that was read before", impossible);
        }
    }

    /** All lines but those of the block, which stands at the end then. */
    private static String yaml(String text, Map<String, BigDecimal> factors) {
        List<String> lines = new ArrayList<>();
        List<String> between = new ArrayList<>();
        boolean within = false;
        for (String line : text.lines().toList()) {
            if (line.matches("[\"']?" + BLOCK + "[\"']?\\s*:.*")) {
                within = true;
            } else if (within && (line.isBlank() || line.startsWith("#"))) {
                // of the block where it goes on, else of what follows it
                between.add(line);
            } else {
                within &= line.startsWith(" ") || line.startsWith("}");
                if (!within) {
                    lines.addAll(between);
                    lines.add(line);
                }
                between.clear();
            }
        }
        lines.addAll(between);
        lines.add("");
        lines.add(BLOCK + ": # found by fit");
        factors.forEach((factor, value) -> lines.add("  " + factor + ": " + value.toPlainString()));
        return String.join("\n", lines) + "\n";
    }
}
