package org.warmvat.tank;

import java.util.List;
import org.warmvat.account.Books;
import org.warmvat.account.Order;
import org.warmvat.account.Period;
import org.warmvat.envelope.EnvelopePart;
import org.warmvat.envelope.FittingsPart;
import org.warmvat.feeding.FeedPart;
import org.warmvat.gas.GasPart;
import org.warmvat.heating.BackupPart;
import org.warmvat.heating.SolarPart;
import org.warmvat.network.meter.Balance;
import org.warmvat.network.meter.Line;
import org.warmvat.network.meter.Meter;
import org.warmvat.network.meter.Unit;
import org.warmvat.stirring.MixerPart;

/**
 * The lines that stand in the results of every tank, whatever parts it has, in the order in which files have told them since version
 * 0.1.0. A new line needs no place here: its part declares it, and it follows those of its group.
 */
public final class Lines {

    /** Length of a period. */
    public static final Line HOURS = new Line("hours", "hours", Unit.TIMES);

    /** Electricity of the mixer. */
    public static final Line MIXER = consumer("mixer", "mixer");

    /** Electricity of the feed auger. */
    public static final Line AUGER = consumer("auger", "auger");

    /** Electricity of the shredder. */
    public static final Line SHREDDER = consumer("shredder", "shredder");

    /** Electricity of the solar pump. */
    public static final Line SOLAR_PUMP = consumer("solar_pump", "solar pump");

    /** Electricity of the backup pump. */
    public static final Line BACKUP_PUMP = consumer("backup_pump", "backup pump");

    /** Electricity of the air pump. */
    public static final Line AIR_PUMP = consumer("air_pump", "air pump");

    /** Electricity of the controls. */
    public static final Line ELECTRONICS = consumer("electronics", "controls");

    /** The order. */
    public static final Order ORDER = new Order(
            List.of(
                    HOURS,
                    SolarPart.HEAT,
                    BackupPart.HEAT,
                    KeyFigures.SOLAR_SHARE,
                    MixerPart.SHAFT,
                    GasPart.REACTION,
                    FeedPart.FEED,
                    GasPart.GAS_LOSS,
                    EnvelopePart.WALL_LOSS,
                    EnvelopePart.DRY_WALL_LOSS,
                    EnvelopePart.LID_LOSS,
                    EnvelopePart.FLOOR_LOSS,
                    FittingsPart.LOSS,
                    SolarPart.ABSORBED_SUN,
                    SolarPart.LOSS,
                    SolarPart.SUN_NOT_USED,
                    BackupPart.POWER,
                    BackupPart.LOSS,
                    BackupPart.BOUGHT,
                    KeyFigures.STORED,
                    EnvelopePart.STORED,
                    SolarPart.STORED,
                    BackupPart.STORED,
                    MIXER,
                    AUGER,
                    SHREDDER,
                    SOLAR_PUMP,
                    BACKUP_PUMP,
                    AIR_PUMP,
                    ELECTRONICS,
                    Meter.ELECTRICITY,
                    GasPart.METHANE_MADE,
                    GasPart.BIOGAS,
                    GasPart.GAS_ENERGY,
                    KeyFigures.NET,
                    KeyFigures.NET_WEIGHTED,
                    GasPart.HIGHEST_AIR_SHARE,
                    KeyFigures.LEAST_C,
                    KeyFigures.MEAN_C,
                    KeyFigures.MOST_C,
                    KeyFigures.BELOW_FLOOR_HOURS,
                    KeyFigures.NEAR_FREEZING_HOURS,
                    SolarPart.STAGNATION_HOURS,
                    SolarPart.CAKING_HOURS,
                    BackupPart.CAKING_HOURS,
                    SolarPart.FROZEN_HOURS,
                    FittingsPart.COLD_PIPE_END_HOURS,
                    GasPart.AIR_SHARE_HOURS,
                    SolarPart.STARTS,
                    BackupPart.STARTS,
                    Books.RESIDUAL_FRACTION,
                    Balance.SLURRY.residual(),
                    SolarPart.COLLECTOR.residual(),
                    BackupPart.BACKUP.residual(),
                    Books.PASSED_THROUGH),
            List.of(
                    "slurry_c",
                    "collector_c",
                    "backup_circuit_c",
                    "air_c",
                    "solar_heat_w",
                    "backup_heat_w",
                    EnvelopePart.LOSS_W,
                    "feed_w",
                    "mixer_electric_w",
                    "auger_electric_w",
                    Meter.OTHER_ELECTRIC_W,
                    "methane_nm3_h",
                    "collector_irradiance_w_m2"),
            List.of(
                    KeyFigures.BELOW_FLOOR,
                    KeyFigures.FREEZING,
                    KeyFigures.BOILING,
                    KeyFigures.NEAR_FREEZING,
                    KeyFigures.TOO_COLD,
                    KeyFigures.TOO_HOT,
                    "daily_change",
                    SolarPart.SOLAR_CAKING,
                    SolarPart.STAGNATION,
                    SolarPart.LOOP_FROZEN,
                    BackupPart.BACKUP_CAKING,
                    FittingsPart.COLD_PIPE_END,
                    "air_share",
                    "own_gas_short"));

    private Lines() {}

    /** What an answer turns on: useful net energy where uses of the gas are given, else net energy. */
    public static Line leading(Books books) {
        return books.has(KeyFigures.USEFUL_NET) ? KeyFigures.USEFUL_NET : KeyFigures.NET;
    }

    /** All that is lost through envelope and fittings, kWh. */
    public static double lossKWh(Period period) {
        return period.of(EnvelopePart.WALL_LOSS)
                + period.of(EnvelopePart.DRY_WALL_LOSS)
                + period.of(EnvelopePart.LID_LOSS)
                + period.of(EnvelopePart.FLOOR_LOSS)
                + period.of(FittingsPart.LOSS);
    }

    private static Line consumer(String key, String name) {
        return Meter.electricity(key, name).told().get(0).line();
    }
}
