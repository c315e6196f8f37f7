package org.warmvat.design;

import java.util.LinkedHashMap;
import java.util.Map;
import org.warmvat.design.envelope.Material;
import org.warmvat.design.keys.Parts;

/** Lists the known materials that a design only names under its {@code materials}, so that their numbers have paths. */
public final class ListedMaterials {

    private ListedMaterials() {}

    /** The same design, its materials listed. */
    public static Design of(Design design) {
        Map<String, Material> all = new LinkedHashMap<>(design.materials());
        Parts.each(design, Material.class, material -> {
            if (Material.known().containsKey(material.name())) {
                all.putIfAbsent(material.name(), material);
            }
            return material;
        });
        return Parts.component(design, "materials", all);
    }
}
