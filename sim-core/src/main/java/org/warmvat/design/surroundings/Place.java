package org.warmvat.design.surroundings;

import java.util.Optional;
import org.warmvat.design.keys.Key;
import org.warmvat.design.keys.Ranges;
import org.warmvat.design.keys.Word;

/** Where the tank stands. */
public sealed interface Place {

    /** Whether the tank stands in a room of its own temperature. */
    default boolean isIndoors() {
        return this instanceof Indoors;
    }

    /** Whether the tank stands under a shelter of its own climate. */
    default boolean isSheltered() {
        return this instanceof InShelter;
    }

    /**
     * Out of doors.
     *
     * @param exposure how open it stands
     * @param statedWindFactor wind at walls and lid over the file's wind at 10 m; absent: by the exposure
     * @param floorWindFactorMost the most of it under a base on legs
     */
    record Outdoors(
            Exposure exposure,

            @Key(
                    name = "exposure_factor",
                    says = "Wind at the tank over the file's wind at 10 m",
                    range = "0 to 1.5",
                    otherwise = "by place: open 0.7, sheltered 0.4, under_roof 0.25")
            Optional<Double> statedWindFactor,

            @Key(
                    name = "floor_exposure_factor_most",
                    says = "Most the exposure factor may be under a base on legs",
                    range = "0 to 1.5",
                    usual = "0.4")
            double floorWindFactorMost)
            implements Place {

        /** Refuses factors out of range. */
        public Outdoors {
            Ranges.check(Outdoors.class, exposure, statedWindFactor, floorWindFactorMost);
        }

        /** Wind at walls and lid over the file's wind at 10 m. */
        public double windFactor() {
            return statedWindFactor.orElse(exposure.usualWindFactor());
        }

        /** The same under a base on legs. */
        public double floorWindFactor() {
            return Math.min(windFactor(), floorWindFactorMost);
        }

        /** Whether wall and lid see sun and sky. */
        public boolean seesSky() {
            return exposure.seesSky();
        }
    }

    /** In an unheated shelter, which the design describes. */
    @Word("shelter")
    record InShelter() implements Place {}

    /**
     * In a room.
     *
     * @param roomC the room's steady temperature, C
     */
    @Word("indoors")
    record Indoors(
            @Key(
                    name = "room_c",
                    says = "Temperature of the room of a tank indoors, which needs it",
                    range = "-30 to 50 C")
            double roomC)
            implements Place {

        /** Refuses a room out of range. */
        public Indoors {
            Ranges.check(Indoors.class, roomC);
        }
    }
}
