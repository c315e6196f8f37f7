package org.warmvat.question.starter;

/** The keys of a starter before its numbers are known. */
final class StarterKeys {

    /** The starter's keys; the names in braces are those of the starter's words. */
    private static final String KEYS = "{title: 'Starter design, {litres} litres at {setpoint} °C',"
            + " tank: {inner_diameter_m: {diameter}, liquid_depth_m: {depth}, headspace_height_m: {headspace}, stands_on: legs,"
            + " place: {place}},"
            + " envelope: {shell: stainless_steel, shell_mm: 2, insulation: pir_foam, insulation_mm: {foam},"
            + " lid_insulation_mm: {lid_foam}, cladding: aluminium_sheet, cladding_mm: 0.8},"
            + " fittings: [{name: gas outlet, ua_w_k: 0.25}, {name: inlet, ua_w_k: 0.5}, {name: hatch, ua_w_k: 0.2},"
            + " {name: legs, bar: {material: steel, section_mm2: 400, length_mm: 150, count: 4}},"
            + " {name: shaft, bar: {material: stainless_steel, section_mm2: 490, length_mm: {foam}}},"
            + " {name: coil pipes, bar: {material: {conductivity_w_mk: 380, density_kg_m3: 8900, specific_heat_j_kgk: 385},"
            + " section_mm2: 66, length_mm: {foam}, count: 4}},"
            + " {name: outlet, pipe: {bore_mm: 110, wall_material: pvc_rigid, wall_mm: 3.2, length_m: 0.6, insulation_mm: 50,"
            + " insulation_w_mk: 0.027}}],"
            + " feed: {feedstocks: [{name: kitchen scraps, kg_per_day: {scraps}}, {name: garden greens, kg_per_day: {greens},"
            + " total_solids: 0.20, vs_of_ts: 0.85, methane_nm3_per_kg_vs: 0.27, rate_per_day: 0.07}], temperature: air,"
            + " may_freeze: true, water: {kg_per_day: {water}, temperature: {fixed_c: 10}}, windows: [{start: '08:00', hours: 3}]},"
            + " mixer: {revolutions_per_hour: 4, torque_nm: {torque}},"
            + "{solar_keys}"
            + " backup: {source: {source}, rated_w: {heater}, flow_limit_c: {flow_limit}, water_kg: {backup_water},"
            + " loop_kg_s: {backup_loop}, coil: {area_m2: {backup_coil}}},"
            + " control: {setpoint_c: {setpoint}, band_k: 1.0, floor_below_setpoint_k: 2.0},"
            + " gas: {methane_fraction: 0.58}{more_keys}}";

    private static final String SOLAR_KEYS =
            " solar: {area_m2: {collector}, tilt_deg: 60, {tube_keys}loop_kg_s: {solar_loop},"
                    + " loop_capacity_j_k: {solar_capacity}, coil: {area_m2: {solar_coil}}},";

    /** Evacuated tubes: less through the glass, less lost. */
    private static final String TUBE_KEYS = "eta0: 0.62, a1_w_m2k: 1.4, a2_w_m2k2: 0.006, ";

    private static final String TUNNEL_KEYS =
            ", shelter: {kind: polytunnel_single, floor_area_m2: 16, cover_area_m2: 42, volume_m3: 32}";
    private static final String REST_KEYS =
            ", calendar: [{name: winter rest, from: '{rest_from}', to: '{rest_to}', setpoint_c: 8,"
                    + " feed_factor: 0, floor: none, mixer_minutes_per_hour: 5}]";

    private StarterKeys() {}

    static String of(Starter.AtHand atHand, boolean hasCollector) {
        String tubes = atHand.collector() == Starter.CollectorKind.TUBES ? TUBE_KEYS : "";
        String solar = hasCollector ? SOLAR_KEYS.replace("{tube_keys}", tubes) : "";
        String more = (atHand.standing() == Starter.Standing.POLYTUNNEL ? TUNNEL_KEYS : "")
                + (atHand.winterRest() ? REST_KEYS : "");
        return KEYS.replace("{solar_keys}", solar).replace("{more_keys}", more);
    }
}
