package org.warmvat.question.backup;

import org.warmvat.design.Design;
import org.warmvat.engine.Engine;
import org.warmvat.engine.Hours;
import org.warmvat.question.ColdSpell;
import org.warmvat.question.CyclicWeather;
import org.warmvat.question.ShortHours;
import org.warmvat.question.Variations;
import org.warmvat.question.hold.ColdFill;
import org.warmvat.tank.Runner;
import org.warmvat.weather.Weather;

/** A weather file with its runner and its cold fill, and what is asked of a heater there. */
record BackupSite(Design design, Runner year, ColdFill fill, BackupStudy.Question question) {

    static BackupSite of(Design design, Weather file, Engine engine, BackupStudy.Question question) {
        Weather weather = ColdSpell.colder(file, question.coldSpellK());
        int days = question.warmUp().days();
        return new BackupSite(
                CyclicWeather.design(design, weather),
                new Runner(weather, engine),
                ColdFill.of(design, weather, days, days, engine),
                question);
    }

    /** The design with a heater of some power. */
    Design with(double ratedW) {
        return Variations.withBackupPower(design, ratedW);
    }

    /** Whether a design stands below its minimum no longer than allowed. */
    boolean holdsMinimum(Design some) {
        return ShortHours.of(year.runIn(some), new Hours(0, year.file().hours()), question.shortHours())
                <= question.shortHours();
    }

    /** Whether a design warms its cold fill up in time. */
    boolean warmsUp(Design some) {
        return fill.hours(some, question.warmUp().fillC()).isPresent();
    }
}
