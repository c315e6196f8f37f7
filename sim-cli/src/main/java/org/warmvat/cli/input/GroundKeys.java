package org.warmvat.cli.input;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.Optional;
import java.util.stream.Stream;
import org.warmvat.design.Ground;
import org.warmvat.design.GroundWave;

/** The block {@code ground}. */
record GroundKeys(
        @JsonProperty("mean_c")
        @Key(
                says = "Mean of the ground's yearly wave",
                unit = "C",
                least = -30,
                most = 40,
                otherwise = "fitted to the weather's air temperature, with amplitude_k and coldest_day")
        Optional<Double> meanC,

        @JsonProperty("amplitude_k")
        @Key(says = "Amplitude of that wave at the surface", unit = "K", least = 0, most = 50)
        Optional<Double> amplitudeK,

        @JsonProperty("coldest_day")
        @Key(says = "Day of its coldest point, counted from 1 January", unit = "day", least = 0, most = 366)
        Optional<Double> coldestDay,

        @JsonProperty("diffusivity_m2_day")
        @Key(says = "Thermal diffusivity of the ground", unit = "m2/day", least = 0.005, most = 0.5, usual = "0.05")
        double diffusivityM2PerDay,

        @JsonProperty("depth_m")
        @Key(
                says = "Depth whose temperature counts for floor, feed and water",
                unit = "m",
                least = 0,
                most = 10,
                usual = "0.5")
        double depthM,

        @JsonProperty("reflectance")
        @Key(
                says = "Share of sunlight the ground throws back; snow is far brighter",
                least = 0,
                most = 1,
                usual = "0.2")
        double reflectance) {

    void check(Faults faults) {
        boolean any = Stream.of(meanC, amplitudeK, coldestDay).anyMatch(Optional::isPresent);
        String reason = "needed beside the other two of mean_c, amplitude_k and coldest_day";
        faults.needed("ground.mean_c", meanC, any, reason);
        faults.needed("ground.amplitude_k", amplitudeK, any, reason);
        faults.needed("ground.coldest_day", coldestDay, any, reason);
    }

    Ground ground() {
        Optional<GroundWave> wave =
                meanC.map(mean -> new GroundWave(mean, amplitudeK.orElseThrow(), coldestDay.orElseThrow()));
        return new Ground(wave, diffusivityM2PerDay, depthM, reflectance);
    }
}
