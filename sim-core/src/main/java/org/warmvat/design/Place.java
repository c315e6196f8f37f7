package org.warmvat.design;

/** Where the tank stands. */
public sealed interface Place {

    /** Whether wall and lid see sun and sky. */
    boolean seesSky();

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
     * @param windFactor wind at walls and lid over the file's wind at 10 m, 0..1.5
     * @param floorWindFactor the same under a floor on legs, 0..1.5: the smaller of {@code windFactor} and 0.4 unless decided otherwise
     */
    record Outdoors(Exposure exposure, double windFactor, double floorWindFactor) implements Place {

        /** Refuses factors out of range. */
        public Outdoors {
            Ranges.within("exposure factor", windFactor, 0, 1.5);
            Ranges.within("exposure factor of the floor", floorWindFactor, 0, 1.5);
        }

        @Override
        public boolean seesSky() {
            return exposure.seesSky();
        }
    }

    /**
     * In an unheated shelter.
     *
     * @param shelter the shelter
     */
    record InShelter(Shelter shelter) implements Place {

        @Override
        public boolean seesSky() {
            return false;
        }
    }

    /**
     * In a room.
     *
     * @param roomC the room's steady temperature, C, -30..50
     */
    record Indoors(double roomC) implements Place {

        /** Refuses a room out of range. */
        public Indoors {
            Ranges.within("room temperature in C", roomC, -30, 50);
        }

        @Override
        public boolean seesSky() {
            return false;
        }
    }
}
