package org.warmvat.design;

import java.util.LinkedHashMap;
import java.util.Map;
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
        return new Design(
                design.title(),
                design.tank(),
                design.envelope(),
                all,
                design.fittings(),
                design.feed(),
                design.mixer(),
                design.solar(),
                design.backup(),
                design.control(),
                design.gas(),
                design.contents(),
                design.site(),
                design.runIn(),
                design.prices(),
                design.spells(),
                design.shelter(),
                design.effluent(),
                design.adjust(),
                design.project(),
                design.plausible());
    }
}
