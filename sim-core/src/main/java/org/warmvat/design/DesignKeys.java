package org.warmvat.design;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.warmvat.design.envelope.Material;
import org.warmvat.design.keys.Findings;
import org.warmvat.design.keys.Reader;
import org.warmvat.design.keys.Refused;
import org.warmvat.spelling.Nearest;

/** Reads a design from a tree of keys: its own materials first, since the layers call them by name. */
final class DesignKeys {

    private DesignKeys() {}

    static Design read(Map<String, ?> keys, Findings findings) {
        Map<String, Material> known = new LinkedHashMap<>(Material.known());
        Reader own = new Reader(findings, (path, name, f) -> name);
        if (keys.get("materials") instanceof Map<?, ?> stated && !findings.faulty("materials")) {
            stated.forEach((name, numbers) -> {
                String path = "materials." + name;
                if (numbers instanceof Map<?, ?> block && !findings.faulty(path)) {
                    Map<String, ?> texts = Reader.texts(block);
                    known.put((String) name, own.read(Material.class, texts, Map.of(), path, (String) name));
                }
            });
        }
        return new Reader(findings, (path, name, f) -> material(path, name, known, f))
                .read(Design.class, keys, Map.of(), "", "");
    }

    private static Material material(String path, String name, Map<String, Material> known, Findings findings) {
        Material material = known.get(name);
        if (material == null) {
            String hint = Nearest.of(name, known.keySet())
                    .map(near -> "did you mean " + near + "?")
                    .orElse("expected one of " + String.join(", ", known.keySet()));
            findings.wrong(new Refused.Fault(
                    path,
                    "\"" + name + "\" is not a known material, " + hint + " (others go into the block materials)",
                    List.of("materials")));
        }
        return material == null ? known.get("steel") : material;
    }
}
