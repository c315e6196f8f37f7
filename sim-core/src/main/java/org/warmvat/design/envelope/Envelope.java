package org.warmvat.design.envelope;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.warmvat.design.keys.Key;
import org.warmvat.design.keys.Ranges;
import org.warmvat.design.keys.Refused;
import org.warmvat.design.keys.Shown;

/**
 * What stands between contents and surroundings. Layers run from inside to outside.
 *
 * @param layers layers of wall, lid and base
 * @param outerFace absorptance and emissivity of the outermost face
 * @param films surface coefficients
 * @param rules conventions of nodes and edges
 */
public record Envelope(
        @Key Layers layers,
        @Key OuterFace outerFace,

        @Key(name = "films", says = "Surface coefficients inside and outside", usual = "{}")
        Films films,

        @Key EnvelopeRules rules) {

    /** Keys of its parts. */
    public static final List<String> PARTS = List.of("wall", "lid", "floor");

    private static final String INSULATION = "envelope.insulation_mm";

    /** An envelope of three lists of layers. */
    public Envelope(
            List<Layer> wall,
            List<Layer> lid,
            List<Layer> floor,
            OuterFace outerFace,
            Films films,
            EnvelopeRules rules) {
        this(new Listed(wall, lid, floor), outerFace, films, rules);
    }

    /** Layers of the upright wall, wet and dry stretch alike, each with its sub-nodes. */
    public List<Layer> wall() {
        return rules.cut(layers.wall());
    }

    /** Layers of the lid, each with its sub-nodes. */
    public List<Layer> lid() {
        return rules.cut(layers.lid());
    }

    /** Layers of the base, each with its sub-nodes. */
    public List<Layer> floor() {
        return rules.cut(layers.floor());
    }

    /** Layers of a part by its key, each with its sub-nodes. */
    public List<Layer> part(String key) {
        return switch (key) {
            case "wall" -> wall();
            case "lid" -> lid();
            case "floor" -> floor();
            default -> throw new IllegalArgumentException(key + ", expected one of " + PARTS);
        };
    }

    /** Layers of wall, lid and base as they are stated. */
    public sealed interface Layers {

        /** Layers of the upright wall. */
        List<Layer> wall();

        /** Layers of the lid. */
        List<Layer> lid();

        /** Layers of the base. */
        List<Layer> floor();
    }

    /**
     * A shell, insulation outside it, and outermost a sheet where there is one.
     *
     * @param shell material of the shell
     * @param shellM thickness of the shell, m
     * @param insulation material of the insulation
     * @param insulationM thickness of the insulation, m; 0 for none
     * @param lidInsulationM that of the lid, m; absent: as the wall's
     * @param floorInsulationM that of the base, m; absent: as the wall's
     * @param cladding a sheet outside the insulation, if there is one
     */
    public record ShellAndInsulation(
            @Key(name = "shell", says = "Material of the shell, instead of the three lists", usual = "stainless_steel")
            Material shell,

            @Key(name = "shell_mm", says = "Thickness of the shell", range = "0.05 to 500 mm", usual = "2", per = 1000)
            double shellM,

            @Key(name = "insulation", says = "Material of the insulation outside the shell", usual = "pir_foam")
            Material insulation,

            @Key(
                    name = "insulation_mm",
                    says = "Thickness of the insulation, needed without the three lists; 0 for none",
                    range = "0 to 2000 mm",
                    per = 1000)
            double insulationM,

            @Key(
                    name = "lid_insulation_mm",
                    says = "Thickness of the lid's insulation",
                    range = "0 to 2000 mm",
                    per = 1000,
                    otherwise = "as insulation_mm")
            Optional<Double> lidInsulationM,

            @Key(
                    name = "floor_insulation_mm",
                    says = "Thickness of the base's insulation",
                    range = "0 to 2000 mm",
                    per = 1000,
                    otherwise = "as insulation_mm")
            Optional<Double> floorInsulationM,

            @Key Optional<Sheet> cladding)
            implements Layers {

        private static final double LEAST_LAYER_M = 0.00005;

        /** Refuses thicknesses out of range. */
        public ShellAndInsulation {
            Ranges.check(
                    ShellAndInsulation.class,
                    shell,
                    shellM,
                    insulation,
                    insulationM,
                    lidInsulationM,
                    floorInsulationM,
                    cladding);
            thickOrNone("insulation_mm", insulationM);
            lidInsulationM.ifPresent(thickM -> thickOrNone("lid_insulation_mm", thickM));
            floorInsulationM.ifPresent(thickM -> thickOrNone("floor_insulation_mm", thickM));
        }

        private static void thickOrNone(String key, double thickM) {
            Ranges.stated(
                    thickM == 0 || thickM >= LEAST_LAYER_M,
                    key,
                    Shown.number(1000 * thickM) + ", expected 0 for none or at least 0.05 mm");
        }

        @Override
        public List<Layer> wall() {
            return part(insulationM);
        }

        @Override
        public List<Layer> lid() {
            return part(lidInsulationM.orElse(insulationM));
        }

        @Override
        public List<Layer> floor() {
            return part(floorInsulationM.orElse(insulationM));
        }

        private List<Layer> part(double thicknessM) {
            List<Layer> part = new ArrayList<>();
            part.add(new Layer(shell, shellM, Optional.empty()));
            if (thicknessM > 0) {
                part.add(new Layer(insulation, thicknessM, Optional.empty()));
            }
            cladding.ifPresent(sheet -> part.add(new Layer(sheet.material(), sheet.thicknessM(), Optional.empty())));
            return part;
        }
    }

    /**
     * A sheet outside the insulation.
     *
     * @param material material of the sheet
     * @param thicknessM thickness, m
     */
    public record Sheet(
            @Key(name = "cladding", says = "Material of a sheet outside the insulation; leave it out for none")
            Material material,

            @Key(
                    name = "cladding_mm",
                    says = "Thickness of that sheet",
                    range = "0.05 to 50 mm",
                    usual = "0.8",
                    per = 1000)
            double thicknessM) {

        /** Refuses a thickness out of range. */
        public Sheet {
            Ranges.check(Sheet.class, material, thicknessM);
        }
    }

    /**
     * Three lists of layers.
     *
     * @param wall layers of the upright wall; at least one
     * @param lid layers of the lid; at least one
     * @param floor layers of the base; at least one
     */
    public record Listed(
            @Key(name = "wall", says = "Layers of the wall, from inside to outside", entries = 1)
            List<Layer> wall,

            @Key(name = "lid", says = "Layers of the lid, from inside to outside", entries = 1)
            List<Layer> lid,

            @Key(name = "floor", says = "Layers of the base, from inside to outside", entries = 1)
            List<Layer> floor)
            implements Layers {

        /** Refuses a part without layers. */
        public Listed {
            wall = List.copyOf(wall);
            lid = List.copyOf(lid);
            floor = List.copyOf(floor);
            Ranges.check(Listed.class, wall, lid, floor);
        }
    }

    /**
     * Numbers of a design by their paths: where layers are listed, {@code envelope.insulation_mm} is the main insulation of wall, lid and
     * base alike.
     *
     * @param numbers numbers by their paths
     * @return the same numbers, by the paths that this envelope has
     */
    public Map<String, Double> listed(Map<String, Double> numbers) {
        Double thicknessMm = numbers.get(INSULATION);
        if (thicknessMm == null || !(layers instanceof Listed)) {
            return numbers;
        }
        Map<String, Double> listed = new LinkedHashMap<>(numbers);
        listed.remove(INSULATION);
        for (String part : PARTS) {
            List<Layer> own = part(part);
            rules.mainInsulation(own)
                    .ifPresent(main -> listed.putIfAbsent(
                            "envelope." + part + "[" + own.indexOf(main) + "].thickness_mm", thicknessMm));
        }
        if (listed.size() == numbers.size() - 1) {
            throw new Refused.NoNumber(INSULATION, "has no place: nothing in this design insulates");
        }
        return listed;
    }
}
