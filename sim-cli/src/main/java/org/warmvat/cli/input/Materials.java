package org.warmvat.cli.input;

import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.warmvat.design.Material;
import org.warmvat.weather.file.Nearest;

/**
 * The materials a design may name: the table, and the design's own on top of it.
 *
 * <p>Sources of the table: EN ISO 10456 and EN ISO 10077-2 where they have the material, ASHRAE (aged foams) and CIBSE Guide A for the
 * rest. Foams are aged design values; wet foam is for the user to state.
 */
final class Materials {

    private static final Map<String, MaterialKeys> TABLE = table();

    private final Map<String, MaterialKeys> known;

    Materials(Map<String, MaterialKeys> own) {
        known = new TreeMap<>(TABLE);
        known.putAll(own);
    }

    /** The table alone, by name. */
    static Map<String, MaterialKeys> table() {
        Map<String, MaterialKeys> table = new TreeMap<>();
        table.put("stainless_steel", new MaterialKeys(17, 7900, 460));
        table.put("steel", new MaterialKeys(50, 7800, 450));
        table.put("aluminium_sheet", new MaterialKeys(160, 2800, 880));
        table.put("polyethylene_hd", new MaterialKeys(0.50, 980, 1800));
        table.put("polypropylene", new MaterialKeys(0.22, 910, 1800));
        table.put("pvc_rigid", new MaterialKeys(0.17, 1390, 900));
        table.put("glass_fibre_resin", new MaterialKeys(0.40, 1900, 1100));
        table.put("concrete", new MaterialKeys(1.65, 2200, 1000));
        table.put("timber", new MaterialKeys(0.13, 500, 1600));
        table.put("plywood", new MaterialKeys(0.13, 500, 1600));
        table.put("pir_foam", new MaterialKeys(0.027, 32, 1400));
        table.put("pur_foam", new MaterialKeys(0.026, 32, 1400));
        table.put("phenolic_foam", new MaterialKeys(0.025, 35, 1400));
        table.put("eps_foam", new MaterialKeys(0.037, 20, 1450));
        table.put("xps_foam", new MaterialKeys(0.035, 35, 1450));
        table.put("mineral_wool", new MaterialKeys(0.038, 50, 1030));
        table.put("sheep_wool", new MaterialKeys(0.040, 25, 1700));
        table.put("straw_bale", new MaterialKeys(0.065, 110, 1600));
        return table;
    }

    /** Reports a name that is not known, with the nearest one that is. */
    void check(Faults faults, String path, MaterialChoice choice) {
        if (choice instanceof MaterialChoice.Named named && !known.containsKey(named.name())) {
            Optional<String> nearest = Nearest.of(named.name(), known.keySet());
            faults.add(
                    path,
                    "\"" + named.name() + "\" is not a known material, "
                            + nearest.map(n -> "did you mean " + n + "?")
                                    .orElse("expected one of " + String.join(", ", known.keySet()))
                            + " (others go into the block materials)",
                    "materials");
        }
    }

    /** The material of a checked choice. */
    Material resolve(MaterialChoice choice) {
        if (choice instanceof MaterialChoice.Own own) {
            return own.numbers().named("own material");
        }
        String name = ((MaterialChoice.Named) choice).name();
        return known.get(name).named(name);
    }
}
