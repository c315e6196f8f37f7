package org.warmvat.study;

import org.warmvat.engine.HourSink;
import org.warmvat.engine.Hours;
import org.warmvat.heating.BackupPart;
import org.warmvat.heating.SolarPart;
import org.warmvat.result.Course;
import org.warmvat.tank.Housekeeping;
import org.warmvat.tank.TankRun;
import org.warmvat.weather.Weather;

/** Runs a tank and keeps its course hour by hour. */
final class Coursing {

    private Coursing() {}

    /** Runs over some hours from the present state of a run. */
    static Course of(TankRun run, Weather weather, Hours hours) {
        int count = hours.end() - hours.first();
        HourLog log = new HourLog(run.tank(), run.state(), hours.first(), count, HourSink.IGNORE);
        run.over(hours, log);
        double capacity = run.tank().network().capacitiesJPerK()[run.tank().slurry()];
        double[] solar = log.meter(SolarPart.SOLAR_HEAT);
        double[] backup = log.meter(BackupPart.BACKUP_HEAT);
        double[] edges = log.slurryC();
        double[] slurry = new double[count];
        double[] air = new double[count];
        double[] need = new double[count];
        for (int i = 0; i < count; i++) {
            slurry[i] = edges[i + 1];
            air[i] = weather.airC().at((hours.first() + i + 1) * Hours.HOUR_S);
            need[i] = (solar[i] + backup[i] - capacity * (edges[i + 1] - edges[i])) / Hours.HOUR_S;
        }
        return new Course(
                weather.start().plusHours(hours.first()),
                slurry,
                log.leastC(),
                perHour(log.watchS(Housekeeping.BELOW_FLOOR)),
                air,
                new Course.Heat(perHour(solar), perHour(backup), need));
    }

    private static double[] perHour(double[] integral) {
        double[] mean = new double[integral.length];
        for (int i = 0; i < mean.length; i++) {
            mean[i] = integral[i] / Hours.HOUR_S;
        }
        return mean;
    }
}
