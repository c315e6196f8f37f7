package org.warmvat.tank;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.warmvat.design.RunIn;
import org.warmvat.engine.HourSink;
import org.warmvat.engine.reference.ReferenceEngine;
import org.warmvat.envelope.EnvelopePart;
import org.warmvat.envelope.FittingLoss;
import org.warmvat.envelope.FittingsPart;
import org.warmvat.question.year.YearResult;
import org.warmvat.question.year.YearStudy;
import org.warmvat.sample.InventedWeather;
import org.warmvat.sample.TankPlan;

/** Steady conductances of the demonstration's tank by hand, and against a run in steady weather. */
class ConductancesTest {
    private static final double FILM = 4 + 4 * 0.9 * 5.670374419e-8 * Math.pow(283.15, 3);

    /** Still air at 10 °C: 100 W/m2K inside, steel, 90 mm foam, aluminium, 4 + 4.634 W/m2K outside, on 1 m bore. */
    @Test
    void theWettedWallByHand() {
        double perHeight = 1 / (100 * Math.PI)
                + Math.log(0.502 / 0.5) / (2 * Math.PI * 17)
                + Math.log(0.592 / 0.502) / (2 * Math.PI * 0.027)
                + Math.log(0.5928 / 0.592) / (2 * Math.PI * 160)
                + 1 / (FILM * 2 * Math.PI * 0.5928);
        Conductances found = Conductances.of(new TankPlan().build(), 0, 10);
        assertEquals(1.15 / perHeight, found.wallWPerK(), 1e-9);
    }

    @Test
    void theFloorOnLegsByHand() {
        double area = Math.PI / 4;
        double resistance = (1 / 100.0 + 0.002 / 17 + 0.09 / 0.027 + 0.0008 / 160 + 1 / FILM) / area;
        assertEquals(
                1 / resistance, Conductances.of(new TankPlan().build(), 0, 10).floorWPerK(), 1e-9);
    }

    /** Lid and dry wall share the way through the slurry's surface, 10 W/m2K: star by hand. */
    @Test
    void theHeadspaceIsAStar() {
        double area = Math.PI / 4;
        double lid = area / (1 / 6.0 + 0.002 / 17 + 0.11 / 0.027 + 0.0008 / 160 + 1 / FILM);
        double dryWall = 0.25
                / (1 / (6 * Math.PI)
                        + Math.log(0.502 / 0.5) / (2 * Math.PI * 17)
                        + Math.log(0.592 / 0.502) / (2 * Math.PI * 0.027)
                        + Math.log(0.5928 / 0.592) / (2 * Math.PI * 160)
                        + 1 / (FILM * 2 * Math.PI * 0.5928));
        double edge = 0.54 * 0.027 * Math.PI;
        double branches = lid + dryWall + edge;
        double together = 1 / (1 / (10 * area) + 1 / branches);
        Conductances found = Conductances.of(new TankPlan().build(), 0, 10);
        assertEquals(together * lid / branches, found.lidWPerK(), 1e-9);
        assertEquals(together * dryWall / branches, found.dryWallWPerK(), 1e-9);
        assertEquals(edge + together * edge / branches, found.edgesWPerK(), 1e-9);
    }

    @Test
    void fittingsAddUp() {
        // 0.95 stated, legs 0.18133, the pipe's fin
        double pipe =
                FittingLoss.of(TankPlan.pipe(), new FittingLoss.Still(0.6, 10)).uaWPerK();
        assertEquals(
                0.95 + 0.1813333 + pipe,
                Conductances.of(new TankPlan().build(), 0, 10).fittingsWPerK(),
                1e-6);
    }

    /** A tank so deep that it keeps its temperature, in steady air: each loss of a settled day is its conductance times 26 K. */
    @Test
    void aSettledRunLosesByItsConductances() throws StudyRefused {
        TankPlan plan = new TankPlan().quiet();
        plan.fittings = new TankPlan().fittings;
        plan.depthM = 20;
        plan.runIn = new RunIn.Days(0);
        YearResult result = YearStudy.run(
                plan.build(), new Runner(InventedWeather.steady(10, 24), new ReferenceEngine()), HourSink.IGNORE);
        Conductances steady = Conductances.of(plan.build(), 0, 10);
        double kelvinHours = (result.whole().of(KeyFigures.MEAN_C) - 10) * 24 / 1000;
        // the slurry cools by 0.5 K a day at most, so a layer lags by some thousandths
        double lag = 3e-3;
        assertEquals(
                steady.wallWPerK() + steady.edgesWPerK(),
                result.whole().of(EnvelopePart.WALL_LOSS) / kelvinHours,
                lag * steady.wallWPerK());
        assertEquals(
                steady.lidWPerK(), result.whole().of(EnvelopePart.LID_LOSS) / kelvinHours, lag * steady.lidWPerK());
        assertEquals(
                steady.dryWallWPerK(),
                result.whole().of(EnvelopePart.DRY_WALL_LOSS) / kelvinHours,
                lag * steady.dryWallWPerK());
        assertEquals(
                steady.floorWPerK(),
                result.whole().of(EnvelopePart.FLOOR_LOSS) / kelvinHours,
                lag * steady.floorWPerK());
        assertEquals(steady.fittingsWPerK(), result.whole().of(FittingsPart.LOSS) / kelvinHours, 1e-6);
    }

    /** Figures told without a run, from the same conductances: time constant, retention, loss and feed in the cold. */
    @Test
    void derivedFiguresFollow() {
        var design = new TankPlan().build();
        DerivedFigures figures = DerivedFigures.of(design, 3, 9, -10);
        double ua = figures.conductances().totalWPerK();
        assertEquals(design.contentsHeatCapacityJPerK() / ua / 3600, figures.timeConstantH(), 1e-9);
        assertEquals(45.6, figures.retentionDays(), 0.05);
        assertEquals(46 * ua, figures.coldLossW(), 1e-9);
        // 10 kg at 21.2 % solids frozen through at -10 °C, 10 kg of water at 10 °C
        double solids = 0.212;
        double c = (1 - solids) * 4186 + solids * 1600;
        double ice = (1 - solids) * 2100 + solids * 1600;
        double scraps = 10 * (c * 36 + (1 - solids) * 334_000 + ice * 10);
        assertEquals((scraps + 10 * 4186 * 26) / 86_400, figures.coldFeedW(), 1e-9);
        assertEquals((6 * 0.22 * 0.88 + 4 * 0.2 * 0.85) / 0.9032079, figures.loadingKgVsPerM3Day(), 1e-6);
    }
}
