package org.warmvat.design;

/**
 * An unheated shed, lean-to or tunnel round the tank (equation 13.5).
 *
 * @param kind what it is
 * @param size its floor, cover and volume
 * @param cover what the cover passes and takes up
 * @param airing how much air comes through
 * @param groundResistanceM2KPerW from its air to the ground, m2 K/W, 0.01..20
 * @param massKJPerK heat stored in its floor and furniture beside the air, kJ/K, 0..1000000
 */
public record Shelter(
        ShelterKind kind, Size size, Cover cover, Airing airing, double groundResistanceM2KPerW, double massKJPerK) {

    /** Heat capacity of air, J/(m3 K). */
    public static final double AIR_J_PER_M3_K = 1200;

    /** Mass taken per area of floor unless stated, kJ/(K m2) (common practice, no source). */
    public static final double USUAL_MASS_KJ_PER_K_M2 = 40;

    /** Refuses numbers out of range. */
    public Shelter {
        Ranges.within("ground resistance of the shelter in m2K/W", groundResistanceM2KPerW, 0.01, 20);
        Ranges.within("mass of the shelter in kJ/K", massKJPerK, 0, 1_000_000);
    }

    /**
     * How large it is.
     *
     * @param floorAreaM2 ground covered, m2, 0.5..10000
     * @param coverAreaM2 walls and roof, m2, 0.5..50000
     * @param volumeM3 air inside, m3, 0.5..100000
     */
    public record Size(double floorAreaM2, double coverAreaM2, double volumeM3) {

        /** Refuses numbers out of range. */
        public Size {
            Ranges.within("floor area of the shelter in m2", floorAreaM2, 0.5, 10_000);
            Ranges.within("cover area of the shelter in m2", coverAreaM2, 0.5, 50_000);
            Ranges.within("volume of the shelter in m3", volumeM3, 0.5, 100_000);
        }
    }

    /**
     * Its skin.
     *
     * @param uWPerM2K conductance, W/(m2 K), 0.05..20
     * @param sunTransmittance share of the sun let in, 0..1
     * @param absorptance share of the sun taken up, 0..1; both together at most 1
     */
    public record Cover(double uWPerM2K, double sunTransmittance, double absorptance) {

        /** Refuses numbers out of range. */
        public Cover {
            Ranges.within("conductance of the cover in W/m2K", uWPerM2K, 0.05, 20);
            Ranges.within("sun transmittance of the cover", sunTransmittance, 0, 1);
            Ranges.within("absorptance of the cover", absorptance, 0, 1);
            Ranges.stated(
                    "sun transmittance and absorptance of the cover together "
                            + Ranges.text(sunTransmittance + absorptance),
                    sunTransmittance + absorptance <= 1,
                    "at most 1");
        }
    }

    /**
     * Air that comes through.
     *
     * @param changesPerH in still air, 1/h, 0..200
     * @param changesPerHPerMPerS more for each m/s of wind at the shelter, 0..20
     * @param exposureFactor wind at the shelter over the file's wind at 10 m, 0..1.5
     * @param openedAboveC air inside above which it is opened, C, -20..100; infinite for never
     * @param openedChangesPerH when wide open, 5 K above that, 1/h, 0..500
     */
    public record Airing(
            double changesPerH,
            double changesPerHPerMPerS,
            double exposureFactor,
            double openedAboveC,
            double openedChangesPerH) {

        /** Kelvin over which it is opened from shut to wide. */
        public static final double OPENING_K = 5;

        /** Refuses numbers out of range. */
        public Airing {
            Ranges.within("air changes of the shelter in 1/h", changesPerH, 0, 200);
            Ranges.within("air changes of the shelter by wind in 1/h per m/s", changesPerHPerMPerS, 0, 20);
            Ranges.within("exposure factor of the shelter", exposureFactor, 0, 1.5);
            if (openedAboveC != Double.POSITIVE_INFINITY) {
                Ranges.within("temperature above which the shelter is opened in C", openedAboveC, -20, 100);
            }
            Ranges.within("air changes of the opened shelter in 1/h", openedChangesPerH, 0, 500);
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
            double share = Math.max(0, Math.min(1, (insideC - openedAboveC) / OPENING_K));
            return shutPerH + Math.max(0, openedChangesPerH - shutPerH) * share;
        }
    }

    /** Heat capacity of its air and mass, J/K. */
    public double capacityJPerK() {
        return AIR_J_PER_M3_K * size.volumeM3() + 1000 * massKJPerK;
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
