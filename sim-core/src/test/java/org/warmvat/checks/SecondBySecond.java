package org.warmvat.checks;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.DoubleUnaryOperator;
import org.warmvat.design.Design;
import org.warmvat.design.envelope.Layer;
import org.warmvat.design.feeding.FeedTemperature;
import org.warmvat.design.feeding.Feedstock;
import org.warmvat.design.feeding.Hygienisation;
import org.warmvat.design.gas.Condensate;
import org.warmvat.design.gas.Gas;
import org.warmvat.design.gas.GasHolder;
import org.warmvat.design.gas.GasUse;
import org.warmvat.design.heating.BackupCircuit;
import org.warmvat.design.heating.BackupSource;
import org.warmvat.design.heating.SolarCircuit;
import org.warmvat.design.season.SeasonTable;
import org.warmvat.design.surroundings.Place;
import org.warmvat.design.surroundings.Shelter;
import org.warmvat.design.surroundings.StandsOn;
import org.warmvat.design.tank.Shape;
import org.warmvat.envelope.Edges;
import org.warmvat.envelope.FittingLoss;
import org.warmvat.envelope.TankSun;
import org.warmvat.feeding.FeedStream;
import org.warmvat.gas.GasVapour;
import org.warmvat.heating.CoilFlow;
import org.warmvat.heating.CollectorSun;
import org.warmvat.weather.Weather;

/**
 * The model once more, written apart from parts and engines: explicit steps of one second, everything looked up anew at each. Slow,
 * plain and to be trusted. No run-in; hours of a weather file from its first.
 */
final class SecondBySecond {

    private static final double SIGMA = 5.670374419e-8;
    private static final double METHANE_J_PER_NM3 = 35.8e6;

    /** What was summed, by name, in SI. */
    final Map<String, Double> sums = new TreeMap<>();
    /** Slurry at the hours' ends, °C. */
    final List<Double> slurryC = new ArrayList<>();
    /** Shelter at the hours' ends, °C. */
    final List<Double> shelterC = new ArrayList<>();
    /** Holder at the hours' ends, Nm3. */
    final List<Double> holderNm3 = new ArrayList<>();

    private final Design d;
    private final Weather weather;
    private final DoubleUnaryOperator groundC;
    private final SeasonTable season;
    private final TankSun tankSun;
    private final CollectorSun collectorSun;
    private final List<Stack> stacks = new ArrayList<>();
    private final double[] solids;
    private final double dtS;
    private final Edges edges;
    private final double fittingsWPerK;
    private LocalDate date;
    private double minute = Double.NaN;
    private double ts;
    private double tc;
    private double tb;
    private double te;
    private double g;
    private double headC;
    private boolean solarPump;
    private boolean demand;
    private boolean backupPump;
    private boolean empty;
    private boolean usesHeld;
    private int day;
    private int hour;
    private double t;

    private static final class Stack {
        final double[] c;
        final double[] k;
        final double[] temp;
        final double[] before;
        final double[] met = new double[2];
        double metAtS = Double.NaN;
        final double outerHalf;
        final double outerM2;
        final boolean dry;
        final String face;

        Stack(String face, List<Layer> layers, double innerM2, double boreM, double heightM, double film) {
            this.face = face;
            dry = face.equals("lid") || face.equals("dry_wall");
            List<double[]> slices = new ArrayList<>();
            double r = boreM;
            for (Layer layer : layers) {
                double thick = layer.thicknessM() / layer.subNodes();
                for (int i = 0; i < layer.subNodes(); i++) {
                    double lambda = layer.material().conductivityWPerMK();
                    double rhoC = layer.material().heatCapacityJPerM3K();
                    if (boreM > 0) {
                        slices.add(new double[] {
                            Math.log((r + thick) / r) / (2 * Math.PI * lambda * heightM),
                            rhoC * Math.PI * ((r + thick) * (r + thick) - r * r) * heightM
                        });
                        r += thick;
                    } else {
                        slices.add(new double[] {thick / lambda / innerM2, rhoC * thick * innerM2});
                    }
                }
            }
            int n = slices.size();
            c = new double[n];
            k = new double[n];
            temp = new double[n];
            before = new double[n];
            for (int i = 0; i < n; i++) {
                c[i] = slices.get(i)[1];
                double before = i == 0 ? 1 / (film * innerM2) : slices.get(i - 1)[0] / 2;
                k[i] = 1 / (before + slices.get(i)[0] / 2);
            }
            outerHalf = slices.get(n - 1)[0] / 2;
            outerM2 = boreM > 0 ? 2 * Math.PI * r * heightM : innerM2;
        }
    }

    /** Sets up a run at the file's first hour. */
    SecondBySecond(Design design, Weather weather, DoubleUnaryOperator groundC, double dtS) {
        d = design;
        this.weather = weather;
        this.groundC = groundC;
        this.dtS = dtS;
        season = design.season();
        edges = Edges.of(design);
        fittingsWPerK = design.fittings().stream()
                .map(fitting -> FittingLoss.of(fitting, FittingLoss.Still.of(design)))
                .mapToDouble(FittingLoss::uaWPerK)
                .sum();
        tankSun = new TankSun(design, weather);
        collectorSun = design.solar().isPresent()
                ? new CollectorSun(
                        weather,
                        design.solar().get().collector(),
                        design.collectorShading(),
                        design.site().ground().reflectance())
                : null;
        envelope();
        solids = new double[d.feed().feedstocks().size()];
        start();
    }

    private void envelope() {
        double plan = d.tank().innerPlanAreaM2();
        double bore = d.tank().shape() instanceof Shape.UprightCylinder c ? c.innerDiameterM() / 2 : 0;
        double wet = d.tank().liquidDepthM();
        double dry = d.tank().headspaceHeightM();
        double round = d.tank().innerPerimeterM();
        var films = d.envelope().films();
        stacks.add(new Stack("wall", d.envelope().wall(), round * wet, bore, wet, films.wetWPerM2K()));
        stacks.add(new Stack("floor", d.envelope().floor(), plan, 0, 0, films.wetWPerM2K()));
        stacks.add(new Stack("dry_wall", d.envelope().wall(), round * dry, bore, dry, films.dryWPerM2K()));
        stacks.add(new Stack("lid", d.envelope().lid(), plan, 0, 0, films.dryWPerM2K()));
    }

    private void start() {
        look(0);
        ts = season.on(day).setpointC();
        tc = weather.airC().at(0);
        tb = ts;
        te = weather.airC().at(0);
        double hold = ts;
        for (Stack stack : stacks) {
            java.util.Arrays.fill(stack.temp, ts);
        }
        settle();
        ts = hold;
        for (int i = 0; i < solids.length && d.gas().isPresent(); i++) {
            Feedstock f = d.feed().feedstocks().get(i);
            double perDay = f.volatileSolidsKgPerDay() / d.tank().liquidVolumeM3();
            double loss = d.feed().totalKgPerDay() / d.contentsKg()
                    + f.ratePerDay() * d.gas().get().rateFactor(d.control().setpointC());
            solids[i] = perDay == 0 ? 0 : perDay / loss;
        }
        d.gas().flatMap(Gas::holder).ifPresent(h -> {
            g = h.startsFullShare() * h.fullNm3();
            empty = g <= 0;
            usesHeld = g <= reserve() * h.fullNm3();
        });
    }

    /** Envelope steady against the first instant, by relaxation of many small steps of the chains alone. */
    private void settle() {
        for (int round = 0; round < 400_000; round++) {
            for (Stack stack : stacks) {
                conduct(stack, 20, false);
            }
        }
    }

    private double reserve() {
        GasHolder h = d.gas().flatMap(Gas::holder).orElseThrow();
        boolean draws =
                d.backup().filter(b -> b.source() == BackupSource.OWN_GAS).isPresent()
                        || d.feed()
                                .hygienisation()
                                .filter(y -> y.source() == BackupSource.OWN_GAS)
                                .isPresent();
        return draws ? h.reserveShare() : 0;
    }

    private void look(double time) {
        t = time;
        hour = (int) Math.min(Math.floor(time / 3600 + 1e-9), weather.hours() - 1);
        double now = Math.floor(time / 60 + 1e-9);
        if (now == minute) {
            return;
        }
        minute = now;
        date = weather.start().plusSeconds((long) Math.floor(time + 1e-6)).toLocalDate();
        int of = date.getDayOfYear() - 1;
        day = date.isLeapYear() && of >= 59 ? of - 1 : of;
    }

    private double add(String name, double value) {
        sums.merge(name, value, Double::sum);
        return value;
    }

    /** Runs some hours. */
    void over(int hours) {
        int steps = (int) Math.round(3600 / dtS);
        for (int h = 0; h < hours; h++) {
            for (int i = 0; i < steps; i++) {
                look(3600.0 * h + i * dtS);
                step();
            }
            slurryC.add(ts);
            shelterC.add(te);
            holderNm3.add(g);
        }
    }

    private double aroundC() {
        Place place = d.tank().place();
        if (place instanceof Place.Indoors indoors) {
            return indoors.roomC();
        }
        return place instanceof Place.InShelter ? te : weather.airC().at(t);
    }

    /** One step of a chain; returns heat received through its outer face, W. */
    private double conduct(Stack s, double dt, boolean count) {
        double inside = s.dry ? headC() : ts;
        double[] film = film(s);
        int n = s.c.length;
        double[] before = s.before;
        System.arraycopy(s.temp, 0, before, 0, n);
        double outW = (film[1] - before[n - 1]) / (s.outerHalf + 1 / (film[0] * s.outerM2));
        for (int i = 0; i < n; i++) {
            double inC = i == 0 ? inside : before[i - 1];
            double net = s.k[i] * (inC - before[i]);
            net += i == n - 1 ? outW : s.k[i + 1] * (before[i + 1] - before[i]);
            s.temp[i] += dt / s.c[i] * net;
        }
        if (count) {
            add(s.face, outW * dt);
        }
        return outW;
    }

    private double headC() {
        double surface = d.envelope().films().surfaceWPerM2K() * d.tank().innerPlanAreaM2();
        double g = surface + edges.dryWPerK();
        double q = surface * ts + edges.dryWPerK() * film(stacks.get(0))[1];
        for (Stack s : stacks) {
            if (s.dry) {
                g += s.k[0];
                q += s.k[0] * s.temp[0];
            }
        }
        headC = q / g;
        return headC;
    }

    /** Film in W/m2K and equivalent temperature of what a face meets. */
    private double[] film(Stack s) {
        if (s.metAtS != t || d.tank().place() instanceof Place.InShelter) {
            System.arraycopy(filmNow(s), 0, s.met, 0, 2);
            s.metAtS = t;
        }
        return s.met;
    }

    private double[] filmNow(Stack s) {
        if (s.face.equals("floor") && d.tank().standsOn() == StandsOn.GROUND) {
            return new double[] {1 / d.envelope().rules().soilResistanceM2KPerW(), groundC.applyAsDouble(t)};
        }
        if (!(d.tank().place() instanceof Place.Outdoors out)) {
            return new double[] {d.envelope().films().indoorWPerM2K(), aroundC()};
        }
        double ta = weather.airC().at(t);
        boolean floor = s.face.equals("floor");
        double v = weather.windMPerS().at(t) * (floor ? out.floorWindFactor() : out.windFactor());
        double hc =
                d.envelope().films().outerStillWPerM2K() + d.envelope().films().outerPerWindJPerM3K() * v;
        double hr = 4 * d.envelope().outerFace().emissivity() * SIGMA * Math.pow(ta + 273.15, 3);
        boolean lid = s.face.equals("lid");
        double view = floor || !out.seesSky() ? 0 : lid ? tankSun.lidSkyFactor() : 0.5 * tankSun.wallSkyFactor();
        double tr = view * weather.skyC(hour, t) + (1 - view) * ta;
        double sun = floor || !out.seesSky() ? 0 : lid ? tankSun.lidWPerM2(hour) : tankSun.wallWPerM2(hour);
        return new double[] {
            hc + hr, (hc * ta + hr * tr + d.envelope().outerFace().absorptance() * sun) / (hc + hr)
        };
    }

    private void step() {
        double ta = weather.airC().at(t);
        double around = aroundC();
        double secondOfHour = weather.start().getMinute() * 60 + t - 3600 * Math.floor(t / 3600);
        secondOfHour %= 3600;
        boolean mixing = secondOfHour < 60 * season.on(day).mixerMinutesPerHour() - 1e-9;
        double dTs = 0;
        double toShelter = 0;
        if (mixing) {
            dTs += add("shaft", d.mixer().shaftW() * dtS);
        }
        dTs += feed() * dtS;
        double fit = fittingsWPerK * (ts - around);
        add("fittings", -fit * dtS);
        double eq = film(stacks.get(0))[1];
        double head = headC();
        double edge = edges.wetWPerK() * (ts - eq) + edges.dryWPerK() * (head - eq);
        add("edges", -edge * dtS);
        toShelter += fit + edge;
        double surface = d.envelope().films().surfaceWPerM2K() * d.tank().innerPlanAreaM2();
        double inside = surface * (ts - head);
        for (Stack s : stacks) {
            inside += s.dry ? 0 : s.k[0] * (ts - s.temp[0]);
        }
        dTs -= (fit + edges.wetWPerK() * (ts - eq) + inside) * dtS;
        double methane = gas(ta, dtS);
        dTs += gasHeatW * dtS;
        double[] solar = solar(ta, mixing);
        dTs += solar[0] * dtS;
        double[] backup = backup(around, mixing);
        dTs += backup[0] * dtS;
        toShelter += backup[1];
        holder(methane, backup[2]);
        for (Stack s : stacks) {
            double outW = conduct(s, dtS, true);
            if (!(s.face.equals("floor") && d.tank().standsOn() == StandsOn.GROUND)) {
                toShelter -= outW;
            }
        }
        if (d.shelter().isPresent()) {
            shelter(d.shelter().get(), ta, toShelter);
        }
        count();
        ts += dTs / d.contentsHeatCapacityJPerK();
    }

    private void count() {
        double minimum = season.on(day).minimumC();
        if (ts < minimum) {
            add(season.isGrace(day) ? "warming_up_s" : "below_s", dtS);
        }
        if (ts < 2) {
            add("near_freezing_s", dtS);
        }
    }

    private void shelter(Shelter s, double ta, double fromTank) {
        double v = s.airing().exposureFactor() * weather.windMPerS().at(t);
        double hc =
                d.envelope().films().outerStillWPerM2K() + d.envelope().films().outerPerWindJPerM3K() * v;
        double hr = 4 * 0.9 * SIGMA * Math.pow(ta + 273.15, 3);
        double tr = 0.5 * weather.skyC(hour, t) + 0.5 * ta;
        double ih = tankSun.lidWPerM2(hour);
        double toa = ta + ((tr - ta) * hr + s.cover().absorptance() * ih / 2) / (hc + hr);
        double n0 = s.airing().changesPerH() + s.airing().changesPerHPerMPerS() * v;
        double n = n0;
        if (te > ta && !Double.isInfinite(s.airing().openedAboveC())) {
            n += Math.max(0, s.airing().openedChangesPerH() - n0)
                    * Math.max(0, Math.min(1, (te - s.airing().openedAboveC()) / 5));
        }
        double cover = s.cover().uWPerM2K() * s.size().coverAreaM2() * (te - toa);
        double air = 1200 * n * s.size().volumeM3() / 3600 * (te - ta);
        double sun = s.cover().sunTransmittance() * s.size().floorAreaM2() * ih;
        double ground = s.size().floorAreaM2() / s.groundResistanceM2KPerW() * (te - groundC.applyAsDouble(t));
        add("shelter_from_tank", fromTank * dtS);
        add("shelter_sun", sun * dtS);
        add("shelter_cover", cover * dtS);
        add("shelter_air", air * dtS);
        add("shelter_ground", ground * dtS);
        te += dtS / (1200 * s.size().volumeM3() + 1000 * s.massKJPerK()) * (fromTank + sun - cover - air - ground);
    }

    private double streamC(FeedTemperature source) {
        double c;
        if (source instanceof FeedTemperature.Fixed fixed) {
            c = fixed.celsius();
        } else if (source instanceof FeedTemperature.Ground) {
            c = groundC.applyAsDouble(t);
        } else if (source instanceof FeedTemperature.Room) {
            c = aroundC();
        } else {
            double end = Math.max(86_400, hour * 3600.0);
            c = weather.airC().mean(end - 86_400, end);
        }
        return d.feed().handling().mayFreeze() ? c : Math.max(0, c);
    }

    private boolean feedOpen() {
        return d.feed().schedule().isOpenAt(secondOfDay());
    }

    private double secondOfDay() {
        return (weather.start().toLocalTime().toSecondOfDay() + t + 1e-7) % 86_400;
    }

    private double feed() {
        double q = 0;
        hygieneW = 0;
        if (!feedOpen()) {
            return 0;
        }
        double open = d.feed().schedule().openSecondsPerDay();
        double[] hot = new double[2];
        double[] cold = new double[2];
        for (int i = 0; i < d.feed().feedstocks().size(); i++) {
            Feedstock f = d.feed().feedstocks().get(i);
            double kg = f.kgPerDay() * season.on(day).feedstockFactor(i);
            double[] into =
                    d.feed().hygienisation().filter(h -> h.heats(f.name())).isPresent() ? hot : cold;
            into[0] += kg;
            into[1] += kg * f.totalSolidsFraction();
        }
        add("fed_kg", (hot[0] + cold[0]) / open * dtS);
        double water = d.feed().waterKgPerDay() * season.on(day).waterFactor();
        double tf = streamC(d.feed().temperature());
        double tw = d.feed().water().map(w -> streamC(w.temperature())).orElse(0.0);
        q += stream(cold[0] / open, cold[0] == 0 ? 0 : cold[1] / cold[0], tf, true);
        q += stream(water / open, 0, tw, true);
        if (hot[0] > 0) {
            double w = hot[1] / hot[0];
            Hygienisation h = d.feed().hygienisation().orElseThrow();
            q += stream(hot[0] / open, w, h.entersC(tf), false);
            FeedStream s = new FeedStream(d.contents(), w, d.feed().handling().freezingRangeK());
            double kgPerS = hot[0] / open;
            double hyg = h.heat().temperatureC();
            double recovered = h.recovery() * s.specificHeatJPerKgK() * (hyg - Math.max(tf, 0));
            double loss = h.lossUaWPerK()
                    * (hyg - aroundC())
                    * 3600
                    * (h.heat().holdH() + h.heat().heatUpH())
                    / open;
            hygieneW = kgPerS * (s.enthalpyJPerKg(hyg) - s.enthalpyJPerKg(tf) - recovered) + loss;
            add("hygiene_heat", hygieneW * dtS);
            add("hygiene_recovered", kgPerS * recovered * dtS);
            add("hygiene_loss", loss * dtS);
            add("hygiene_bought", hygieneW / h.efficiency() * dtS);
            hygieneW /= h.efficiency();
        }
        add("feed", q * dtS);
        return q;
    }

    private double hygieneW;

    private double stream(double kgPerS, double w, double c, boolean exchanger) {
        FeedStream s = new FeedStream(d.contents(), w, d.feed().handling().freezingRangeK());
        double cf = s.specificHeatJPerKgK();
        double e = exchanger && season.on(day).isExchangerOn()
                ? d.feed().handling().exchangerEffectiveness()
                : 0;
        double back = e * Math.min(cf, d.contentsSpecificHeatJPerKgK()) * (ts - Math.max(c, 0));
        return -kgPerS * (cf * ts - s.enthalpyJPerKg(c) - back);
    }

    private double gasHeatW;

    /** Dry biogas, Nm3/s. */
    private double gas(double ta, double dt) {
        gasHeatW = 0;
        if (d.gas().isEmpty()) {
            return 0;
        }
        Gas gas = d.gas().get();
        double methane = 0;
        double factor = gas.rateFactor(ts);
        boolean open = feedOpen();
        double openS = d.feed().schedule().openSecondsPerDay();
        double volume = d.tank().liquidVolumeM3();
        double total = d.feed().waterKgPerDay() * season.on(day).waterFactor();
        for (int i = 0; i < solids.length; i++) {
            total += d.feed().feedstocks().get(i).kgPerDay() * season.on(day).feedstockFactor(i);
        }
        double dilution = open ? total / openS / d.contentsKg() : 0;
        for (int i = 0; i < solids.length; i++) {
            Feedstock f = d.feed().feedstocks().get(i);
            double k = f.ratePerDay() / 86_400 * factor;
            methane += f.methaneNm3PerKgVs() * k * solids[i] * volume;
            double gain = open ? f.volatileSolidsKgPerDay() * season.on(day).feedstockFactor(i) / openS / volume : 0;
            solids[i] += dt * (gain - (k + dilution) * solids[i]);
        }
        double biogas = methane / gas.methaneFraction();
        double p = weather.pressureHPa(hour) * 100;
        gasHeatW = -biogas * GasVapour.heatJPerNm3(ts, ta, p, gas.heatCapacityJPerM3K())
                + methane * gas.reactionHeatKJPerNm3Methane() * 1000;
        add("methane", methane * dt);
        gas.condensate().ifPresent(to -> {
            double tk = to instanceof Condensate.Air
                    ? ta
                    : to instanceof Condensate.Ground ? groundC.applyAsDouble(t) : ((Condensate.Fixed) to).celsius();
            double x = 0.8036 * pressureOver(ts) / (p - pressureOver(ts))
                    - 0.8036 * pressureOver(tk) / (p - pressureOver(tk));
            add("condensate", Math.max(0, x) * biogas * dt);
            if (tk < 0 && biogas > 0) {
                add("condensate_frost_s", dt);
            }
        });
        return biogas;
    }

    private static double pressureOver(double c) {
        return 611.2 * Math.exp(17.62 * c / (243.12 + c));
    }

    private double[] solar(double ta, boolean mixing) {
        if (d.solar().isEmpty()) {
            return new double[] {0};
        }
        SolarCircuit s = d.solar().get();
        var pump = s.pumpControl();
        double limit = pump.highLimit().celsius(season.on(day).setpointC());
        boolean on = season.on(day).isSolarOn();
        double diff = tc - ts;
        if (solarPump) {
            solarPump = on && diff > pump.stopDifferenceK() && ts < limit;
        } else if (on
                && diff >= pump.startDifferenceK()
                && ts <= limit - pump.restartBelowLimitK()
                && tc <= pump.startBarC()) {
            solarPump = true;
            add("solar_starts", 1);
        }
        var c = s.collector();
        double dk = tc - ta;
        double wind = c.windAndSky().exposureFactor() * weather.windMPerS().at(t) - 3;
        double tilt = Math.toRadians(c.plane().tiltDeg());
        double fc = collectorSun.skyFactor() * (1 + Math.cos(tilt)) / 2;
        double tsky = weather.skyC(hour, t) + 273.15;
        double long4 = SIGMA * fc * (Math.pow(tsky, 4) - Math.pow(ta + 273.15, 4));
        double absorbed = c.areaM2()
                * (collectorSun.absorbedWPerM2(hour)
                        - c.windAndSky().a6SPerM() * wind * collectorSun.totalWPerM2(hour));
        double loss = c.areaM2()
                        * (c.a1WPerM2K() * dk
                                + c.a2WPerM2K2() * dk * Math.abs(dk)
                                + c.windAndSky().a3JPerM3K() * wind * dk
                                - c.windAndSky().a4() * long4)
                + s.loop().pipeUaWPerK() * dk;
        double q = 0;
        if (solarPump) {
            CoilFlow flow = new CoilFlow(s.coil(), 1, s.loop().capacityRateWPerK());
            q = flow.conductanceWPerK(mixing) * diff;
        }
        add("absorbed", absorbed * dtS);
        add("collector_loss", loss * dtS);
        add("solar", q * dtS);
        tc += dtS / s.capacityJPerK() * (absorbed - loss - q);
        return new double[] {q};
    }

    /** Heat into the slurry, heat lost around, gas drawn in Nm3/s. */
    private double[] backup(double around, boolean mixing) {
        if (d.backup().isEmpty()) {
            return new double[] {0, 0, 0};
        }
        BackupCircuit b = d.backup().get();
        double set = season.on(day).setpointC();
        double half = season.on(day).bandK() / 2;
        if (demand) {
            demand = ts < set + half;
        } else {
            demand = ts <= set - half;
        }
        boolean own = b.source() == BackupSource.OWN_GAS
                && d.gas().flatMap(Gas::holder).isPresent();
        boolean permitted =
                b.allowedHours().isOpenAt(secondOfDay()) && season.on(day).isBackupOn();
        boolean calling = demand && permitted && !(own && empty);
        if (own && demand && permitted && empty) {
            add("short_of_own_gas_s", dtS);
        }
        double power = 0;
        double q = 0;
        double lost = 0;
        if (b.through() instanceof BackupCircuit.Circuit c) {
            double diff = tb - ts;
            backupPump = backupPump ? calling || diff > c.flow().overrunDifferenceK() : calling && diff >= 0;
            if (calling) {
                power = b.ratedW()
                        * Math.max(
                                0,
                                Math.min(1, (c.flow().limitC() - tb) / c.flow().bandK()));
            }
            if (backupPump) {
                q = new CoilFlow(c.coil(), 1, c.loop().flowKgPerS() * 4186).conductanceWPerK(mixing) * diff;
            }
            lost = c.lossUaWPerK() * (tb - around);
            tb += dtS / (c.waterKg() * 4186) * (power - q - lost);
        } else {
            power = calling ? b.ratedW() : 0;
            q = power;
        }
        add("backup_power", power * dtS);
        add("backup", q * dtS);
        add("backup_lost", lost * dtS);
        double draw = own
                ? power / b.efficiency() / (METHANE_J_PER_NM3 * d.gas().get().methaneFraction())
                : 0;
        return new double[] {q, lost, draw};
    }

    private void holder(double biogas, double own) {
        if (d.gas().flatMap(Gas::holder).isEmpty()) {
            return;
        }
        Gas gas = d.gas().get();
        GasHolder h = gas.holder().get();
        double perW = 1 / (METHANE_J_PER_NM3 * gas.methaneFraction());
        double full = h.fullNm3();
        empty = empty ? g < h.restartShare() * full : g <= 0;
        double reserve = reserve();
        usesHeld = usesHeld ? g < (reserve + h.restartShare()) * full : g <= reserve * full;
        double uses = 0;
        for (GasUse use : gas.uses()) {
            if (use.months().contains(date.getMonthValue()) && use.hours().isOpenAt(secondOfDay())) {
                double w = 1000 * use.kw();
                if (usesHeld) {
                    add("unmet_" + use.name(), w * dtS);
                } else {
                    add("met_" + use.name(), w * dtS);
                    uses += w * perW;
                }
            }
        }
        double hyg = 0;
        if (d.feed()
                .hygienisation()
                .filter(y -> y.source() == BackupSource.OWN_GAS)
                .isPresent()) {
            if (empty) {
                add("hygiene_short", hygieneW * dtS);
            } else {
                hyg = hygieneW * perW;
            }
        }
        double next = g + dtS * (biogas - uses - own - hyg);
        add("holder_made", biogas * dtS);
        add("holder_uses", uses * dtS);
        add("holder_own", own * dtS);
        add("holder_hygiene", hyg * dtS);
        if (next > full) {
            add("surplus", next - full);
            add("full_s", dtS);
            next = full;
        }
        if (empty) {
            add("empty_s", dtS);
        }
        g = Math.max(0, next);
    }
}
