package org.warmvat.cli.file;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.warmvat.design.envelope.Material;
import org.warmvat.design.feeding.FeedMaterial;
import org.warmvat.design.keys.KeyPath;
import org.warmvat.design.keys.Shown;

/** The tables of keys and materials in the design-file page, made from the schema. */
final class DesignKeyTables {

    private final StringBuilder page = new StringBuilder();

    private DesignKeyTables() {}

    /** One table a block, in the order of the schema, then the materials. */
    static String generate() {
        DesignKeyTables tables = new DesignKeyTables();
        tables.block("Blocks", "", FileSchema.DESIGN.root(), "The whole file.");
        tables.materials();
        tables.feedstocks();
        return tables.page.toString();
    }

    private void block(String heading, String path, JsonNode block, String says) {
        page.append("\n### ").append(heading).append("\n\n");
        page.append(says).append("\n\n");
        page.append("| key | unit | allowed | default | what and why |\n|---|---|---|---|---|\n");
        Map<JsonNode, List<String>> inner = new LinkedHashMap<>();
        for (String name : FileSchema.DESIGN.keys(block)) {
            JsonNode key = FileSchema.DESIGN.key(block, name);
            boolean required = contains(FileSchema.DESIGN.blockOf(block).path("required"), name);
            row(name, key, required);
            if (holdsKeys(key)) {
                inner.computeIfAbsent(inside(key), same -> new ArrayList<>()).add(name);
            }
        }
        inner.values().forEach(names -> blocksAlike(path, block, names));
    }

    /** Blocks with the same keys share one table. */
    private void blocksAlike(String path, JsonNode block, List<String> names) {
        List<String> headings = new ArrayList<>();
        List<String> says = new ArrayList<>();
        for (String name : names) {
            JsonNode key = FileSchema.DESIGN.key(block, name);
            headings.add("`" + KeyPath.key(path, name) + suffix(key) + "`");
            says.add(sentence(key.path("description").asText()));
        }
        JsonNode first = FileSchema.DESIGN.key(block, names.get(0));
        String at = KeyPath.key(path, names.get(0)) + suffix(first);
        block(String.join(", ", headings), at, inside(first), String.join(" ", says));
    }

    private void row(String name, JsonNode key, boolean required) {
        page.append("| `").append(name).append("` | ");
        page.append(DesignFindings.spelt(key.path("x-unit").asText())).append(" | ");
        page.append(allowed(key)).append(" | ");
        page.append(usual(key, required)).append(" | ");
        page.append(sentence(DesignFindings.spelt(key.path("description").asText())))
                .append(" |\n");
    }

    private static String allowed(JsonNode key) {
        if (holdsKeys(key)
                && FileSchema.DESIGN.resolved(key).path("type").asText().equals("object")) {
            return "a block";
        }
        String allowed = Expectation.of(FileSchema.DESIGN, key);
        String unit = key.path("x-unit").asText();
        return unit.isEmpty() || !allowed.endsWith(" " + unit)
                ? allowed
                : allowed.substring(0, allowed.length() - unit.length() - 1);
    }

    private static String usual(JsonNode key, boolean required) {
        String when = key.path("x-default-when").asText();
        String condition = when.isEmpty() ? "" : " (when `" + when.replace(" and ", "` and `") + "`)";
        if (key.has("x-otherwise")) {
            return key.path("x-otherwise").asText() + condition;
        }
        JsonNode usual = key.path("default");
        if (usual.isMissingNode()) {
            return required ? "**required**" : "none";
        }
        boolean map =
                FileSchema.DESIGN.resolved(key).path("additionalProperties").isObject();
        String empty = map ? "none" : "all defaults";
        return (usual.isObject() && usual.isEmpty() ? empty : words(usual)) + condition;
    }

    /** A default in words: numbers plain, lists by their entries, blocks by their keys. */
    private static String words(JsonNode value) {
        List<String> parts = new ArrayList<>();
        if (value.isNumber()) {
            return Shown.number(value.doubleValue());
        }
        if (value.isArray()) {
            value.forEach(entry -> parts.add(words(entry)));
            return parts.isEmpty() ? "none" : String.join("; ", parts);
        }
        if (value.isObject()) {
            value.properties().forEach(entry -> parts.add(entry.getKey() + " " + words(entry.getValue())));
            return String.join(", ", parts);
        }
        return value.asText();
    }

    private static String sentence(String says) {
        return says.isEmpty() || says.endsWith(".") ? says : says + ".";
    }

    private static boolean contains(JsonNode names, String name) {
        for (JsonNode candidate : names) {
            if (candidate.asText().equals(name)) {
                return true;
            }
        }
        return false;
    }

    /** Materials have their own short form in every place and are described once, in the block of that name. */
    private static boolean holdsKeys(JsonNode key) {
        JsonNode inside = inside(key);
        boolean choiceOfMaterial = FileSchema.DESIGN.resolved(key).has("anyOf");
        return !choiceOfMaterial && !FileSchema.DESIGN.keys(inside).isEmpty();
    }

    private static JsonNode inside(JsonNode key) {
        JsonNode at = FileSchema.DESIGN.resolved(key);
        JsonNode free = at.path("additionalProperties");
        JsonNode entries = FileSchema.DESIGN.entries(at);
        return free.isObject() ? free : entries.isMissingNode() ? at : entries;
    }

    private static String suffix(JsonNode key) {
        JsonNode at = FileSchema.DESIGN.resolved(key);
        return at.path("additionalProperties").isObject()
                ? ".NAME"
                : FileSchema.DESIGN.entries(at).isMissingNode() ? "" : "[]";
    }

    private void materials() {
        page.append("\n### Materials\n\n");
        page.append("| material | conductivity W/mK | density kg/m3 | specific heat J/kgK |\n|---|---|---|---|\n");
        Material.known()
                .forEach((name, numbers) -> page.append("| `")
                        .append(name)
                        .append("` | ")
                        .append(Shown.number(numbers.conductivityWPerMK()))
                        .append(" | ")
                        .append(Shown.number(numbers.densityKgPerM3()))
                        .append(" | ")
                        .append(Shown.number(numbers.specificHeatJPerKgK()))
                        .append(" |\n"));
    }

    private void feedstocks() {
        page.append("\n### Feedstocks\n\n");
        page.append("Low, middle and high of each; the middle is what a design takes. *Seen* was read in print.\n\n");
        page.append(
                "| material | total solids | volatile of total | methane Nm³/kg VS | rate 1/day | sources | caution |\n");
        page.append("|---|---|---|---|---|---|---|\n");
        for (FeedMaterial material : FeedMaterial.values()) {
            List<FeedMaterial.Band> bands = List.of(
                    material.totalSolids(),
                    material.volatileOfTotal(),
                    material.methaneNm3PerKgVs(),
                    material.ratePerDay());
            page.append("| `").append(material.word()).append("` |");
            bands.forEach(band -> page.append(' ')
                    .append(Shown.number(band.low()))
                    .append(", ")
                    .append(Shown.number(band.middle()))
                    .append(", ")
                    .append(Shown.number(band.high()))
                    .append(" |"));
            page.append(" solids: ").append(bands.get(0).source());
            page.append("; volatile: ").append(bands.get(1).source());
            page.append("; methane: ").append(bands.get(2).source());
            page.append("; rate: ").append(bands.get(3).source()).append(" | ");
            page.append(material.caution().words()).append(" |\n");
        }
    }
}
