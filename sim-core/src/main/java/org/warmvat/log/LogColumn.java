package org.warmvat.log;

import java.util.Optional;

/** What a log may hold beside the slurry's temperature. */
public enum LogColumn {
    /** Outdoor air, or the room's, °C, at the row. */
    AIR("air_c", -60, 60, Kind.AT_THE_ROW),

    /** Global irradiance on the horizontal, W/m2, mean of the step that ends at the row. */
    GLOBAL("global_w_m2", 0, 1500, Kind.MEAN),

    /** Wind, m/s, at the row. */
    WIND("wind_m_s", 0, 60, Kind.AT_THE_ROW),

    /** Electricity into the backup heater, W, mean of the step. */
    BACKUP_ELECTRIC("backup_electric_w", 0, 1e6, Kind.MEAN),

    /** Heat from the backup circuit into the slurry, W, mean of the step. */
    BACKUP_HEAT("backup_heat_w", -1e6, 1e6, Kind.MEAN),

    /** Heat from the solar circuit into the slurry, W, mean of the step. */
    SOLAR_HEAT("solar_heat_w", -1e6, 1e6, Kind.MEAN),

    /** Feed and its water, kg, in the step. */
    FEED("feed_kg", 0, 1e5, Kind.SUM),

    /** Share of the step in which the mixer turned, 0 to 1. */
    MIXER("mixer_on", 0, 1, Kind.MEAN);

    /** What a row's value stands for. */
    enum Kind {
        AT_THE_ROW,
        MEAN,
        SUM
    }

    private final String key;
    private final double least;
    private final double most;
    private final Kind kind;

    LogColumn(String key, double least, double most, Kind kind) {
        this.key = key;
        this.least = least;
        this.most = most;
        this.kind = kind;
    }

    /** Its name in the file, unit included. */
    public String key() {
        return key;
    }

    /** Lowest value taken. */
    public double least() {
        return least;
    }

    /** Highest value taken. */
    public double most() {
        return most;
    }

    /** Whether it is heat or electricity that becomes heat, without which nothing is known of the slurry. */
    boolean isHeat() {
        return this == BACKUP_ELECTRIC || this == BACKUP_HEAT || this == SOLAR_HEAT;
    }

    Kind kind() {
        return kind;
    }

    /** The column of a name. */
    public static Optional<LogColumn> ofKey(String key) {
        for (LogColumn column : values()) {
            if (column.key.equals(key)) {
                return Optional.of(column);
            }
        }
        return Optional.empty();
    }
}
