package org.warmvat.sun;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDateTime;
import org.junit.jupiter.api.Test;
import org.warmvat.checks.Provenance;
import org.warmvat.checks.Published;
import org.warmvat.checks.Sheet;
import org.warmvat.checks.Source;
import org.warmvat.checks.Topic;

/**
 * Published: the nearest and farthest days of the year by J. W. Spencer (1971); daily extraterrestrial irradiation of Duffie
 * and Beckman example 1.10.1 (43 N, 15 April: 33.8 MJ/m2 with 1367 W/m2) and of FAO-56 example 8 (20 S, 3 September: 32.2
 * MJ/m2 with 1367 W/m2), both from memory.
 */
class ExtraterrestrialSpencer1971Test implements Published {
    @Override
    public Source source() {
        return new Source(
                Topic.SUN,
                "Spencer",
                "J. W. Spencer, Search 2(5) (1971) 172, nearest and farthest day as publicly quoted; daily sums of J. A. Duffie, W. A."
                        + " Beckman, example 1.10.1, and FAO-56, example 8, from memory.",
                "1367 W/m2. 43 N on 15 April; 20 S on 3 September.",
                "1 W/m2, as quoted. 2 % for the daily sums: the books take a declination formula that is 0.4° low in April, ours is the"
                        + " true one, with refraction and the middles of hours.");
    }

    @Override
    public void fill(Sheet sheet) {
        sheet.table(Provenance.SEEN)
                .value("normal irradiance on 1 January, W/m2", 1415, 1367 * Extraterrestrial.eccentricity(1), 1)
                .value("normal irradiance on day 171, W/m2", 1322, 1367 * Extraterrestrial.eccentricity(171), 1);
        double constant = 1367 / 1361.0;
        double north = dailyMj(new Observer(43, 0, 0, 1013, 10), LocalDateTime.of(2025, 4, 15, 0, 0));
        double south = dailyMj(new Observer(-20, 0, 0, 1013, 10), LocalDateTime.of(2025, 9, 3, 0, 0));
        sheet.table(Provenance.MEMORY)
                .value("daily sum at 43 N, 15 April, MJ/m2", 33.8, constant * north, 0.68)
                .value("daily sum at 20 S, 3 September, MJ/m2", 32.2, constant * south, 0.64);
    }

    @Test
    void theFirstOfJanuary() {
        assertEquals(1361 * 1.03505, Extraterrestrial.normalWPerM2(1), 0.1);
    }

    private static double dailyMj(Observer observer, LocalDateTime day) {
        double sum = 0;
        for (SunHour hour : SunTrack.over(observer, day, 0, 24)) {
            sum += hour.hourMeanNormalWPerM2() * hour.cosZenith() * 3600 / 1e6;
        }
        return sum;
    }
}
