package org.warmvat.tank;

import org.warmvat.design.Design;
import org.warmvat.design.envelope.Films;
import org.warmvat.envelope.Boundary;
import org.warmvat.envelope.Edges;
import org.warmvat.envelope.EnvelopeParts;
import org.warmvat.envelope.FittingLoss;
import org.warmvat.envelope.LayerChain;
import org.warmvat.weather.Weather;

/**
 * Steady conductances of a design from slurry to surroundings at some wind and air temperature, W/K. Lid, dry wall and the
 * headspace's edges share the way from the slurry's surface into the headspace; their figures are their shares of it.
 *
 * @param wallWPerK wetted wall
 * @param dryWallWPerK dry wall
 * @param lidWPerK lid
 * @param floorWPerK floor
 * @param edgesWPerK all edges
 * @param fittingsWPerK all fittings
 */
public record Conductances(
        double wallWPerK,
        double dryWallWPerK,
        double lidWPerK,
        double floorWPerK,
        double edgesWPerK,
        double fittingsWPerK) {

    /**
     * The conductances of a design.
     *
     * @param design the design
     * @param windMPerS wind at 10 m
     * @param airC air temperature, for the radiative film
     */
    public static Conductances of(Design design, double windMPerS, double airC) {
        EnvelopeParts parts = EnvelopeParts.of(design);
        Films films = design.envelope().films();
        Edges edges = Edges.of(design);
        double adjust = design.adjust().envelope();
        double wallFilm = film(parts.wallBoundary(), windMPerS, airC);
        double lid = through(parts.lid(), films.dryWPerM2K(), film(parts.lidBoundary(), windMPerS, airC));
        double dryWall = through(parts.dryWall(), films.dryWPerM2K(), wallFilm);
        double surface = films.surfaceWPerM2K() * design.tank().innerPlanAreaM2();
        double share = surface / (surface + lid + dryWall + edges.dryWPerK());
        return new Conductances(
                adjust * through(parts.wall(), films.wetWPerM2K(), wallFilm),
                adjust * dryWall * share,
                adjust * lid * share,
                adjust * through(parts.floor(), films.wetWPerM2K(), film(parts.floorBoundary(), windMPerS, airC)),
                adjust * (edges.wetWPerK() + edges.dryWPerK() * share),
                design.adjust().fittings()
                        * design.fittings().stream()
                                .map(fitting -> FittingLoss.of(fitting, FittingLoss.Still.of(design)))
                                .mapToDouble(FittingLoss::uaWPerK)
                                .sum());
    }

    /** The same at the mean wind and air of some weather. */
    public static Conductances of(Design design, Weather weather) {
        return of(design, weather.meanWindMPerS(), weather.meanAirC());
    }

    private static double film(Boundary boundary, double windMPerS, double airC) {
        if (boundary instanceof Boundary.Open open) {
            return open.film().convectionWPerM2K(windMPerS) + open.film().radiationWPerM2K(airC);
        }
        if (boundary instanceof Boundary.Room room) {
            return room.filmWPerM2K();
        }
        return 1 / ((Boundary.Soil) boundary).soilResistanceM2KPerW();
    }

    private static double through(LayerChain chain, double innerFilmWPerM2K, double outerFilmWPerM2K) {
        return 1
                / (1 / (innerFilmWPerM2K * chain.innerAreaM2())
                        + chain.resistanceKPerW()
                        + 1 / (outerFilmWPerM2K * chain.outerAreaM2()));
    }

    /** All together, W/K. */
    public double totalWPerK() {
        return wallWPerK + dryWallWPerK + lidWPerK + floorWPerK + edgesWPerK + fittingsWPerK;
    }
}
