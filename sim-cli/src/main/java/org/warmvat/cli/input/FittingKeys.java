package org.warmvat.cli.input;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.Optional;
import java.util.stream.Stream;
import org.warmvat.design.Fitting;

/** One entry of {@code fittings}: a name and one of three forms. */
record FittingKeys(
        @JsonProperty("name") @Key(says = "Name of the fitting", pattern = "\\S", form = "text that is not blank")
        String name,

        @JsonProperty("ua_w_k") @Key(says = "Its loss per kelvin, as known", unit = "W/K", least = 0, most = 1000)
        Optional<Double> uaWPerK,

        @JsonProperty("bar") @Key(says = "Solid bars through the foam: legs, straps, shafts")
        Optional<BarKeys> bar,

        @JsonProperty("pipe") @Key(says = "A pipe full of still slurry that sticks out: inlets and outlets")
        Optional<PipeKeys> pipe) {

    /** Solid bars. */
    record BarKeys(
            @JsonProperty("material") @Key(says = "What they are made of", usual = "\"stainless_steel\"")
            MaterialChoice material,

            @JsonProperty("section_mm2") @Key(says = "Section of one bar", unit = "mm2", above = 0, most = 1e6)
            double sectionMm2,

            @JsonProperty("length_mm")
            @Key(says = "Length between its warm and its cold end", unit = "mm", least = 1, most = 10000)
            double lengthMm,

            @JsonProperty("count") @Key(says = "How many", least = 1, most = 1000, usual = "1")
            int count) {}

    /** A pipe. */
    record PipeKeys(
            @JsonProperty("bore_mm") @Key(says = "Inner diameter", unit = "mm", least = 5, most = 2000)
            double boreMm,

            @JsonProperty("wall_material") @Key(says = "What its wall is made of", usual = "\"pvc_rigid\"")
            MaterialChoice wallMaterial,

            @JsonProperty("wall_mm")
            @Key(says = "Thickness of its wall", unit = "mm", above = 0, most = 200, usual = "3.2")
            double wallMm,

            @JsonProperty("length_m") @Key(says = "Length outside the envelope", unit = "m", least = 0.01, most = 50)
            double lengthM,

            @JsonProperty("insulation_mm")
            @Key(says = "Thickness of its insulation; 0 for none", unit = "mm", least = 0, most = 1000, usual = "0")
            double insulationMm,

            @JsonProperty("insulation_w_mk")
            @Key(says = "Conductivity of its insulation", unit = "W/mK", least = 0.002, most = 10, usual = "0.027")
            double insulationWPerMK) {}

    void check(Faults faults, String path, Materials materials) {
        long forms = Stream.of(uaWPerK, bar, pipe).filter(Optional::isPresent).count();
        if (forms != 1) {
            String found = forms == 0 ? "has no loss" : "has " + forms + " losses";
            faults.add(path, "(" + name + ") " + found + ", expected one of ua_w_k, bar, pipe");
        }
        bar.ifPresent(b -> materials.check(faults, path + ".bar.material", b.material()));
        pipe.ifPresent(p -> materials.check(faults, path + ".pipe.wall_material", p.wallMaterial()));
    }

    Fitting fitting(Materials materials, Fitting.PipeFilm film) {
        if (bar.isPresent()) {
            BarKeys b = bar.get();
            return new Fitting.Bar(
                    name, materials.resolve(b.material()), b.sectionMm2() / 1e6, b.lengthMm() / 1000, b.count());
        }
        if (pipe.isPresent()) {
            PipeKeys p = pipe.get();
            return new Fitting.Pipe(
                    name,
                    p.boreMm() / 1000,
                    new Fitting.PipeWall(materials.resolve(p.wallMaterial()), p.wallMm() / 1000),
                    new Fitting.PipeInsulation(p.insulationMm() / 1000, p.insulationWPerMK()),
                    p.lengthM(),
                    film);
        }
        return new Fitting.Stated(name, uaWPerK.orElseThrow());
    }
}
