package org.warmvat.design;

/**
 * A building material at its design values.
 *
 * @param name name in the design file
 * @param conductivityWPerMK thermal conductivity, W/(m K), 0.002..500
 * @param densityKgPerM3 density, kg/m3, 1..20000
 * @param specificHeatJPerKgK specific heat, J/(kg K), 100..5000
 */
public record Material(String name, double conductivityWPerMK, double densityKgPerM3, double specificHeatJPerKgK) {

    /** Refuses values out of range. */
    public Material {
        Ranges.named("material", name);
        Ranges.within("conductivity of " + name + " in W/mK", conductivityWPerMK, 0.002, 500);
        Ranges.within("density of " + name + " in kg/m3", densityKgPerM3, 1, 20000);
        Ranges.within("specific heat of " + name + " in J/kgK", specificHeatJPerKgK, 100, 5000);
    }

    /** Volumetric heat capacity, J/(m3 K). */
    public double heatCapacityJPerM3K() {
        return densityKgPerM3 * specificHeatJPerKgK;
    }
}
