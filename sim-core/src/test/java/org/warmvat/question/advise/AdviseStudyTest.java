package org.warmvat.question.advise;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.warmvat.design.Design;
import org.warmvat.design.gas.AirDosing;
import org.warmvat.design.gas.Gas;
import org.warmvat.design.heating.BackupCircuit;
import org.warmvat.design.heating.SolarCircuit;
import org.warmvat.design.keys.Findings;
import org.warmvat.design.keys.Reader;
import org.warmvat.engine.Engine;
import org.warmvat.engine.exponential.ExponentialEngine;
import org.warmvat.question.Parallel;
import org.warmvat.question.payback.PaybackStudy;
import org.warmvat.question.year.BriefYear;
import org.warmvat.sample.StudyTank;
import org.warmvat.tank.Runner;
import org.warmvat.weather.Weather;

/** One small invented tank for each kind of recommendation, which needs just that, and one that needs none. */
class AdviseStudyTest {

    private static final LocalDateTime START = LocalDateTime.of(2025, 1, 1, 0, 0);
    private static final Engine ENGINE = new ExponentialEngine();
    private static final Weather MILD = StudyTank.from(START, 12, 8, 0);
    private static final Weather FROST = StudyTank.from(START, 12, -12, 0);
    private static final Weather SUNNY = StudyTank.from(START, 12, 20, 900);

    /** Warm, well insulated, with gas, without a collector: nothing to be said of it. */
    private static final String GOOD = "{tank: {inner_diameter_m: 1.0, liquid_depth_m: 1.15, stands_on: legs},"
            + " envelope: {insulation_mm: 150}, control: {setpoint_c: 36}, mixer: {minutes_per_hour: 15},"
            + " feed: {feedstocks: [{kg_per_day: 10}], water: {}}, backup: {rated_w: 500}, gas: {}%s}";

    private static Design design(String more) {
        return Design.of(Reader.tree(String.format(GOOD, more)), Findings.strict());
    }

    private static Design withoutGas(String more) {
        return design(more).without(Gas.class);
    }

    private static AdviseResult advise(Design design, Weather... files) {
        try (Parallel parallel = new Parallel(2, Parallel.Progress.SILENT)) {
            return AdviseStudy.run(design, List.of(files), ENGINE, parallel);
        }
    }

    private static List<Kind> kinds(AdviseResult result) {
        return result.recommendations().stream().map(Recommendation::kind).toList();
    }

    /** The only recommendation beside those of a set-point or a failure, which tanks as small as these in weather as short may bring. */
    private static Recommendation only(Kind kind, AdviseResult result) {
        List<Kind> others = kinds(result).stream()
                .filter(other -> other != Kind.SETPOINT && other != Kind.FAILURE)
                .toList();
        assertEquals(List.of(kind), others);
        return result.recommendations().get(0);
    }

    private static Recommendation.Change change(Recommendation one) {
        return one.change().orElseThrow();
    }

    @Test
    void aGoodTankNeedsNone() {
        AdviseResult result = advise(design(""), MILD);
        assertEquals(List.of(), kinds(result));
        assertEquals(Optional.empty(), result.together());
    }

    @Test
    void aSlipGoesBeforeAllElse() {
        Design tenTimes = design("").with("feed.feedstocks[0].kg_per_day", 200);
        AdviseResult result = advise(tenTimes, FROST);
        assertTrue(
                kinds(result).stream().allMatch(kind -> kind == Kind.SLIP),
                kinds(result).toString());
        assertTrue(result.recommendations().get(0).about().contains("is the daily feed in kg?"));
        assertEquals(Optional.empty(), result.grounds().backup());
    }

    @Test
    void tooMuchAirIsDosedLessAndTheSmallerFlowIsEnough() {
        Design dosed = design("").with(dosing(6));
        Recommendation one = only(Kind.AIR, advise(dosed, MILD));
        assertTrue(one.amount() > 0.06, "" + one.amount());
        assertTrue(
                change(one).to() > 0 && change(one).to() < 6, "" + change(one).to());
        assertEquals(0, one.after().hours().air());
        Design less = change(one).made().apply(dosed);
        assertEquals(
                0.0,
                BriefYear.run(less, new Runner(MILD, ENGINE)).year().figures().get("air_share_above_limit_hours"));
    }

    private static Gas dosing(double litresPerHour) {
        Gas gas = design("").gas().orElseThrow();
        Design with = Design.of(
                Reader.tree(String.format(
                        GOOD.replace("gas: {}", "gas: {air_dosing: {litres_per_hour: " + litresPerHour + "}}"), "")),
                Findings.strict());
        assertTrue(gas.airDosing().isEmpty());
        AirDosing made = with.gas().flatMap(Gas::airDosing).orElseThrow();
        assertEquals(litresPerHour, made.litresPerHour());
        return with.gas().orElseThrow();
    }

    @Test
    void aTankTooHotToDigestIsHeldCooler() {
        Recommendation one = only(Kind.TOO_HOT, advise(design("").with("control.setpoint_c", 50), MILD));
        assertEquals("control.setpoint_c", change(one).key());
        assertEquals(37, change(one).to());
        assertEquals(0, one.after().hours().tooHot());
        assertTrue(one.after().energy().methaneNm3() > 0);
    }

    @Test
    void aLoopThatFreezesGetsAFluidThatBearsTheCold() {
        Recommendation one = only(
                Kind.FROZEN_LOOP,
                advise(withoutGas(", solar: {loop_freezes_c: 0, area_m2: 0.5}").with("backup.rated_w", 1000), FROST));
        assertEquals(-20, change(one).to(), "5 K below -12 °C, by fives");
    }

    @Test
    void theColdestPipeIsNamedAndInsulatedWhereThatIsEnough() {
        String pipes = ", fittings: [{name: neck, pipe: {bore_mm: 100, length_m: 0.1}},"
                + " {name: outlet, pipe: {bore_mm: 100, length_m: 0.5}}]";
        Weather chill = StudyTank.from(START, 12, -3, 0);
        Recommendation one = advise(design(pipes), chill).recommendations().get(0);
        assertEquals(Kind.FROZEN_PIPE, one.kind());
        assertEquals("outlet", one.about());
        assertEquals("fittings[1].pipe.insulation_mm", change(one).key());
        assertEquals(0, one.after().hours().frozenPipe());
        Recommendation none = advise(design(pipes), StudyTank.from(START, 12, -35, 0))
                .recommendations()
                .get(0);
        assertEquals(Kind.FROZEN_PIPE, none.kind());
        assertEquals(Optional.empty(), none.change(), "no insulation is enough at -35 °C");
    }

    @Test
    void aCollectorThatStandsHotIsToldAndCoveredOnlyWhereThatCostsNothing() {
        AdviseResult result = advise(withoutGas(", solar: {area_m2: 1.5}"), SUNNY);
        Recommendation one = result.recommendations().get(0);
        assertEquals(Kind.STAGNATION, one.kind());
        assertTrue(one.amount() > 110, "" + one.amount());
        one.change().ifPresent(change -> assertTrue(one.after().isHarmless(result.asIs())));
    }

    @Test
    void aTankWithoutHeaterGetsOne() {
        Recommendation one = advise(design("").without(BackupCircuit.class), MILD)
                .recommendations()
                .get(0);
        assertEquals(Kind.HEATER, one.kind());
        assertTrue(change(one).from().isEmpty());
        assertEquals(0, one.after().hours().below());
    }

    @Test
    void aHeaterTooSmallAndOneWithoutReserveAreToldApart() {
        Recommendation small = only(Kind.HEATER, advise(withoutGas("").with("backup.rated_w", 40), MILD));
        assertEquals("", small.about());
        assertEquals(0, small.after().hours().below());
        double need = small.amount();
        double plain = advise(withoutGas(""), MILD)
                .grounds()
                .backup()
                .orElseThrow()
                .need()
                .forFloorW()
                .orElseThrow();
        assertTrue(plain < need);
        double between = Math.ceil((plain + need) / 2);
        Recommendation reserve = only(Kind.HEATER, advise(withoutGas("").with("backup.rated_w", between), MILD));
        assertEquals("reserve", reserve.about());
        assertTrue(change(reserve).to() >= need);
    }

    @Test
    void aCoilThatIsTheLimitIsMadeLarger() {
        Recommendation one = advise(design("").with("backup.coil.area_m2", 0.02), FROST)
                .recommendations()
                .get(0);
        assertEquals(Kind.BACKUP_COIL, one.kind());
        assertTrue(change(one).to() > 0.02);
        assertTrue(one.after().hours().below()
                <= advise(design("").with("backup.coil.area_m2", 0.02), FROST)
                        .asIs()
                        .hours()
                        .below());
    }

    @Test
    void aTankThatFallsQuicklyIsToldOf() {
        AdviseResult result = advise(
                withoutGas("")
                        .with(Map.of(
                                "tank.inner_diameter_m", 0.5,
                                "tank.liquid_depth_m", 0.3,
                                "envelope.insulation_mm", 22.0,
                                "feed.feedstocks[0].kg_per_day", 1.0,
                                "feed.water.kg_per_day", 1.0)),
                FROST);
        assertTrue(kinds(result).contains(Kind.FAILURE), kinds(result).toString());
    }

    @Test
    void theFittingThatLosesMostIsHalvedInItsOwnWay() {
        String fittings =
                ", fittings: [{name: hatch, ua_w_k: 0.1}, {name: legs, bar: {material: steel, section_mm2: 3000,"
                        + " length_mm: 100, count: 4}}]";
        AdviseResult result = advise(withoutGas(fittings), MILD);
        Recommendation one = only(Kind.FITTING, result);
        assertEquals("legs", one.about());
        assertEquals("fittings[1].bar.length_mm", change(one).key());
        assertEquals(200, change(one).to());
        assertTrue(one.after().gainKWh() > result.asIs().gainKWh() + 20);
    }

    @Test
    void aMixerThatTurnsAllDayRestsUnlessSomethingFloats() {
        Design always = design("").with("mixer.minutes_per_hour", 60).with("mixer.torque_nm", 300);
        assertTrue(kinds(advise(always, MILD)).contains(Kind.MIXER));
        Design floating = Design.of(
                Reader.tree(String.format(
                        GOOD.replace("{kg_per_day: 10}", "{material: wheat_straw, kg_per_day: 1}")
                                .replace("minutes_per_hour: 15", "minutes_per_hour: 60, torque_nm: 300"),
                        "")),
                Findings.strict());
        assertFalse(kinds(advise(floating, MILD)).contains(Kind.MIXER));
    }

    @Test
    void aWarmSetpointThatCostsMoreThanItGivesIsLowered() {
        Recommendation one = advise(design("").with("control.setpoint_c", 43.5).with("backup.rated_w", 1000), FROST)
                .recommendations()
                .get(0);
        assertEquals(Kind.SETPOINT, one.kind());
        assertTrue(change(one).to() < 43.5);
        assertTrue(one.after().isHarmless(one.after()));
    }

    /** In a year of short days each like the other; the other questions are left out here. */
    @Test
    void insulationAndCollectorAreTakenAsFarAsTheyPay() {
        Weather year = StudyTank.from(START, 365, 4, 500);
        Design thin = design(
                        ", solar: {area_m2: 0.5, coil: {area_m2: 1}}, prices: {foam_per_m3: 100, collector_per_m2: 150}")
                .with("envelope.insulation_mm", 60);
        try (Parallel parallel = new Parallel(2, Parallel.Progress.SILENT)) {
            Runner runner = new Runner(year, ENGINE);
            Trials trials = new Trials(thin, List.of(runner), parallel);
            PaybackStudy.Result payback = PaybackStudy.run(thin, List.of(runner), parallel);
            List<Recommendation> found = new Gains(trials).found(Optional.of(payback));
            assertTrue(gain(Kind.INSULATION, found) > 60);
            assertTrue(gain(Kind.COLLECTOR, found) > 0.5);
        }
    }

    /** To what a number is changed. */
    private static double gain(Kind kind, List<Recommendation> found) {
        Recommendation one = found.stream()
                .filter(some -> some.kind() == kind)
                .findFirst()
                .orElseThrow(() -> new AssertionError(kind + " in " + found));
        assertTrue(one.outlay().orElseThrow() > 0);
        return change(one).to();
    }

    /** What hurts, what is cold, what gains, in this order; never more than seven; no change that makes another danger worse. */
    @Test
    void theyAreRankedAndNoneHarms() {
        String poor =
                ", solar: {loop_freezes_c: 0, area_m2: 1}, fittings: [{name: outlet, pipe: {bore_mm: 100, length_m: 0.5}},"
                        + " {name: legs, bar: {material: steel, section_mm2: 3000, length_mm: 100, count: 4}}]";
        AdviseResult result =
                advise(design(poor).with("backup.rated_w", 100).with("envelope.insulation_mm", 40), FROST, MILD);
        List<Kind> kinds = kinds(result);
        assertEquals(
                kinds.stream().filter(kind -> !kind.isEnergy()).sorted().toList(),
                kinds.stream().filter(kind -> !kind.isEnergy()).toList());
        assertTrue(kinds.size() <= AdviseStudy.MOST);
        assertTrue(kinds.size() >= 4, kinds.toString());
        for (Recommendation one : result.recommendations()) {
            assertTrue(
                    one.change().isEmpty() || one.after().isHarmless(result.asIs()),
                    one.kind().toString());
        }
        assertTrue(design(poor).without(SolarCircuit.class).solar().isEmpty());
    }
}
