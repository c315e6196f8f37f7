package org.warmvat.design.surroundings;

import java.util.Optional;
import java.util.OptionalDouble;
import org.warmvat.design.keys.Key;
import org.warmvat.design.keys.Ranges;
import org.warmvat.design.keys.Shown;

/**
 * An unheated shed, lean-to or tunnel round the tank (equation 13.5).
 *
 * @param kind what it is
 * @param size its floor, cover and volume
 * @param cover what the cover passes and takes up; what is not stated follows the kind
 * @param airing how much air comes through; what is not stated follows the kind
 * @param groundResistanceM2KPerW from its air to the ground, m2 K/W
 * @param statedMassKJPerK heat stored in its floor and furniture beside the air, kJ/K; absent: by its floor
 */
public record Shelter(
        @Key(name = "kind", says = "What it is; sets the cover's numbers where they are not given")
        ShelterKind kind,

        @Key Size size,
        @Key Cover cover,
        @Key Airing airing,

        @Key(
                name = "ground_resistance_m2k_w",
                says = "Resistance between its air and the ground",
                range = "0.01 to 20 m2K/W",
                usual = "0.5")
        double groundResistanceM2KPerW,

        @Key(
                name = "mass_kj_k",
                says = "Heat stored in its floor and furniture beside the air",
                range = "0 to 1000000 kJ/K",
                otherwise = "40 x floor_area_m2")
        Optional<Double> statedMassKJPerK) {

    /** Heat capacity of air, J/(m3 K). */
    public static final double AIR_J_PER_M3_K = 1200;

    /** Mass taken per area of floor unless stated, kJ/(K m2) (common practice, no source). */
    public static final double USUAL_MASS_KJ_PER_K_M2 = 40;

    /** Fills from the kind what is not stated, and refuses numbers out of range. */
    public Shelter {
        cover = cover.of(kind);
        airing = airing.of(kind);
        Ranges.check(Shelter.class, kind, size, cover, airing, groundResistanceM2KPerW, statedMassKJPerK);
    }

    /** Heat stored in its floor and furniture beside the air, kJ/K. */
    public double massKJPerK() {
        return statedMassKJPerK.orElse(USUAL_MASS_KJ_PER_K_M2 * size.floorAreaM2());
    }

    /**
     * How large it is.
     *
     * @param floorAreaM2 ground covered, m2
     * @param coverAreaM2 walls and roof, m2
     * @param volumeM3 air inside, m3
     */
    public record Size(
            @Key(name = "floor_area_m2", says = "Ground it covers", range = "0.5 to 10000 m2")
            double floorAreaM2,

            @Key(name = "cover_area_m2", says = "Walls and roof", range = "0.5 to 50000 m2")
            double coverAreaM2,

            @Key(name = "volume_m3", says = "Air inside", range = "0.5 to 100000 m3")
            double volumeM3) {

        /** Refuses numbers out of range. */
        public Size {
            Ranges.check(Size.class, floorAreaM2, coverAreaM2, volumeM3);
        }
    }

    /**
     * Its skin; what is not stated follows the kind.
     *
     * @param statedUWPerM2K conductance, W/(m2 K)
     * @param statedSunTransmittance share of the sun let in
     * @param statedAbsorptance share of the sun taken up; both together at most 1
     */
    public record Cover(
            @Key(
                    name = "cover_u_w_m2k",
                    says = "Conductance of the cover",
                    range = "0.05 to 20 W/m2K",
                    otherwise = "by kind: polytunnel_single 6.5, polytunnel_double 4, timber 2.5, insulated 0.5")
            OptionalDouble statedUWPerM2K,

            @Key(
                    name = "sun_transmittance",
                    says = "Share of the sun let in",
                    range = "0 to 1",
                    otherwise = "by kind: polytunnels 0.75, others 0")
            OptionalDouble statedSunTransmittance,

            @Key(
                    name = "cover_absorptance",
                    says = "Share of the sun the cover takes up; with sun_transmittance at most 1",
                    range = "0 to 1",
                    otherwise = "by kind: polytunnels 0, others 0.6")
            OptionalDouble statedAbsorptance) {

        /** Refuses numbers out of range. */
        public Cover {
            Ranges.check(Cover.class, statedUWPerM2K, statedSunTransmittance, statedAbsorptance);
            double together = statedSunTransmittance.orElse(0) + statedAbsorptance.orElse(0);
            Ranges.stated(
                    together <= 1,
                    "cover_absorptance",
                    "and sun_transmittance together " + Shown.number(together) + ", expected at most 1");
        }

        /** A cover with all its numbers. */
        public Cover(double uWPerM2K, double sunTransmittance, double absorptance) {
            this(OptionalDouble.of(uWPerM2K), OptionalDouble.of(sunTransmittance), OptionalDouble.of(absorptance));
        }

        private Cover of(ShelterKind kind) {
            return new Cover(
                    statedUWPerM2K.orElse(kind.coverUWPerM2K()),
                    statedSunTransmittance.orElse(kind.sunTransmittance()),
                    statedAbsorptance.orElse(kind.coverAbsorptance()));
        }

        /** Conductance, W/(m2 K), of the cover of a shelter. */
        public double uWPerM2K() {
            return statedUWPerM2K.orElseThrow();
        }

        /** Share of the sun let in by the cover of a shelter. */
        public double sunTransmittance() {
            return statedSunTransmittance.orElseThrow();
        }

        /** Share of the sun taken up by the cover of a shelter. */
        public double absorptance() {
            return statedAbsorptance.orElseThrow();
        }
    }

    /**
     * Air that comes through.
     *
     * @param changesPerH in still air, 1/h
     * @param changesPerHPerMPerS more for each m/s of wind at the shelter
     * @param exposureFactor wind at the shelter over the file's wind at 10 m
     * @param statedOpenedAboveC air inside above which it is opened, C; infinite for never; absent: by the kind
     * @param openedChangesPerH when wide open, 5 K above that, 1/h
     */
    public record Airing(
            @Key(name = "air_changes_per_h", says = "Air changes in still air", range = "0 to 200 1/h", usual = "1.0")
            double changesPerH,

            @Key(
                    name = "air_changes_per_h_per_m_s",
                    says = "More air changes for each m/s of wind at the shelter",
                    range = "0 to 20 1/h per m/s",
                    usual = "0.2")
            double changesPerHPerMPerS,

            @Key(
                    name = "exposure_factor",
                    says = "Wind at the shelter over the file's wind at 10 m",
                    range = "0 to 1.5",
                    usual = "0.4")
            double exposureFactor,

            @Key(
                    name = "opened_above_c",
                    says = "Air inside above which it is opened, more and more over 5 K; none for never",
                    range = "-20 to 100 C",
                    word = "none",
                    means = Double.POSITIVE_INFINITY,
                    otherwise = "by kind: polytunnels 30, others none")
            OptionalDouble statedOpenedAboveC,

            @Key(
                    name = "opened_air_changes_per_h",
                    says = "Air changes when it is wide open",
                    range = "0 to 500 1/h",
                    usual = "20")
            double openedChangesPerH) {

        /** Kelvin over which it is opened from shut to wide. */
        public static final double OPENING_K = 5;

        /** Refuses numbers out of range. */
        public Airing {
            Ranges.check(
                    Airing.class,
                    changesPerH,
                    changesPerHPerMPerS,
                    exposureFactor,
                    statedOpenedAboveC,
                    openedChangesPerH);
        }

        /** Airing with all its numbers; infinite for a shelter that is never opened. */
        public Airing(
                double changesPerH,
                double changesPerHPerMPerS,
                double exposureFactor,
                double openedAboveC,
                double openedChangesPerH) {
            this(changesPerH, changesPerHPerMPerS, exposureFactor, OptionalDouble.of(openedAboveC), openedChangesPerH);
        }

        private Airing of(ShelterKind kind) {
            double openedC = statedOpenedAboveC.orElse(kind.openedAboveC().orElse(Double.POSITIVE_INFINITY));
            return new Airing(changesPerH, changesPerHPerMPerS, exposureFactor, openedC, openedChangesPerH);
        }

        /** Air inside above which a shelter is opened, C; infinite for never. */
        public double openedAboveC() {
            return statedOpenedAboveC.orElse(Double.POSITIVE_INFINITY);
        }

        /** Air changes while it is shut, 1/h, at a wind (at the shelter), m/s. */
        public double shutPerH(double windMPerS) {
            return changesPerH + changesPerHPerMPerS * windMPerS;
        }

        /**
         * Air changes, 1/h: from those of the shut shelter up to those of the opened one, over 5 K.
         *
         * @param shutPerH while shut
         * @param insideC air inside
         * @param outsideC air outside: it is not opened to warmer air
         */
        public double perH(double shutPerH, double insideC, double outsideC) {
            if (insideC <= outsideC) {
                return shutPerH;
            }
            double share = Math.max(0, Math.min(1, (insideC - openedAboveC()) / OPENING_K));
            return shutPerH + Math.max(0, openedChangesPerH - shutPerH) * share;
        }
    }

    /** Heat capacity of its air and mass, J/K. */
    public double capacityJPerK() {
        return AIR_J_PER_M3_K * size.volumeM3() + 1000 * massKJPerK();
    }

    /** Conductance of the cover, W/K. */
    public double coverWPerK() {
        return cover.uWPerM2K() * size.coverAreaM2();
    }

    /** Conductance to the ground, W/K. */
    public double groundWPerK() {
        return size.floorAreaM2() / groundResistanceM2KPerW;
    }

    /** Conductance of an air change, W/K per 1/h. */
    public double airWPerKPerChange() {
        return AIR_J_PER_M3_K * size.volumeM3() / 3600;
    }
}
