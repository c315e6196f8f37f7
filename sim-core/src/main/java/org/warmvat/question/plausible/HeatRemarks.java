package org.warmvat.question.plausible;

import org.warmvat.design.Design;
import org.warmvat.question.ColdSpell;
import org.warmvat.question.plausible.Remark.Gravity;
import org.warmvat.tank.Conductances;
import org.warmvat.tank.DerivedFigures;
import org.warmvat.tank.SteadyHeat;
import org.warmvat.weather.Weather;

/** Remarks on heater, coil and collector against what the tank needs. */
record HeatRemarks(Design design, Remarks remarks) {

    void heaterAndCollector(Weather weather) {
        double windMPerS = weather.meanWindMPerS();
        double meanC = weather.meanAirC();
        double coldC = ColdSpell.coldestDayC(weather);
        double coldW = needW(windMPerS, coldC);
        design.backup().ifPresent(heater -> heater(heater.ratedW(), coldW, coldC));
        double sunW = design.solar()
                .map(s -> s.collector().eta0() * 1000 * s.collector().areaM2())
                .orElse(0.0);
        double meanW = needW(windMPerS, meanC);
        if (meanW > 0 && sunW > design.plausible().collectorTimes() * meanW) {
            remarks.add(
                    "collector",
                    Gravity.NOT_CREDIBLE,
                    "The collector gives up to %.0f W, %.0f times what the tank needs on a mean day (%.0f W): is its area in m²?",
                    sunW,
                    sunW / meanW,
                    meanW);
        }
    }

    private double needW(double windMPerS, double airC) {
        Conductances conductances = Conductances.of(design, windMPerS, airC);
        return SteadyHeat.lossW(design, conductances, airC) + SteadyHeat.feedW(design, airC);
    }

    private void heater(double ratedW, double needW, double coldC) {
        if (ratedW < needW) {
            remarks.add(
                    "heater",
                    ratedW < needW / 3 ? Gravity.NOT_CREDIBLE : Gravity.UNLIKELY,
                    "The heater's %.0f W are less than loss and feed of the coldest day, %.0f W at %.1f °C.",
                    ratedW,
                    needW,
                    coldC);
        } else if (needW > 0 && ratedW > design.plausible().heaterTimes() * needW) {
            remarks.add(
                    "heater",
                    Gravity.UNLIKELY,
                    "The heater's %.0f W are %.0f times loss and feed of the coldest day, %.0f W: is its power in W?",
                    ratedW,
                    ratedW / needW,
                    needW);
        }
        DerivedFigures.backupCoilMostW(design)
                .filter(passes -> passes < needW)
                .ifPresent(passes -> remarks.add(
                        "backup_coil",
                        Gravity.UNLIKELY,
                        "The backup coil passes %.0f W at its flow limit, less than loss and feed of the coldest day, %.0f W.",
                        passes,
                        needW));
    }
}
