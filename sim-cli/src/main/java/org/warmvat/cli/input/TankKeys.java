package org.warmvat.cli.input;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.Locale;
import java.util.Optional;
import org.warmvat.design.Exposure;
import org.warmvat.design.Place;
import org.warmvat.design.Shape;
import org.warmvat.design.StandsOn;
import org.warmvat.design.Tank;

/** The block {@code tank}. */
record TankKeys(
        @JsonProperty("shape") @Key(says = "Inner shape", usual = "\"upright_cylinder\"")
        Form shape,

        @JsonProperty("inner_diameter_m")
        @Key(says = "Inner diameter of an upright cylinder, which needs it", unit = "m", least = 0.2, most = 20)
        Optional<Double> innerDiameterM,

        @JsonProperty("inner_length_m")
        @Key(says = "Inner length of a box, which needs it", unit = "m", least = 0.2, most = 20)
        Optional<Double> innerLengthM,

        @JsonProperty("inner_width_m")
        @Key(says = "Inner width of a box, which needs it", unit = "m", least = 0.2, most = 20)
        Optional<Double> innerWidthM,

        @JsonProperty("box_azimuth_deg")
        @Key(
                says =
                        "By how much the four walls of a box are turned clockwise from facing north, east, south and west",
                unit = "deg",
                least = -360,
                most = 360,
                usual = "0",
                when = "shape is box")
        Optional<Double> boxAzimuthDeg,

        @JsonProperty("liquid_depth_m") @Key(says = "Depth of the contents", unit = "m", least = 0.1, most = 20)
        double liquidDepthM,

        @JsonProperty("headspace_height_m")
        @Key(
                says = "Height of the gas space between contents and lid",
                unit = "m",
                least = 0.01,
                most = 10,
                usual = "0.25")
        double headspaceHeightM,

        @JsonProperty("stands_on")
        @Key(says = "What is under the floor: moving air between legs, or the ground", usual = "\"legs\"")
        StandsOn standsOn,

        @JsonProperty("place") @Key(says = "How open the tank stands to wind, sun and sky", usual = "\"sheltered\"")
        Spot place,

        @JsonProperty("room_c")
        @Key(says = "Temperature of the room of a tank indoors, which needs it", unit = "C", least = -30, most = 50)
        Optional<Double> roomC,

        @JsonProperty("exposure_factor")
        @Key(
                says = "Wind at the tank over the file's wind at 10 m",
                least = 0,
                most = 1.5,
                when = "place is not indoors",
                otherwise = "by place: open 0.7, sheltered 0.4, under_roof 0.25")
        Optional<Double> exposureFactor,

        @JsonProperty("floor_exposure_factor_most")
        @Key(
                says = "Most the exposure factor may be under a floor on legs",
                least = 0,
                most = 1.5,
                usual = "0.4",
                when = "stands_on is legs and place is not indoors")
        Optional<Double> floorExposureFactorMost) {

    /** Inner shapes. */
    enum Form {
        UPRIGHT_CYLINDER,
        BOX
    }

    /** Places a tank may stand. */
    enum Spot {
        OPEN,
        SHELTERED,
        UNDER_ROOF,
        INDOORS
    }

    void check(Faults faults) {
        boolean box = shape == Form.BOX;
        faults.needed("tank.inner_diameter_m", innerDiameterM, !box, "needed for an upright_cylinder");
        faults.needed("tank.inner_length_m", innerLengthM, box, "needed for a box");
        faults.needed("tank.inner_width_m", innerWidthM, box, "needed for a box");
        faults.unwanted(
                "tank.inner_diameter_m", innerDiameterM, box, "a box has none: give inner_length_m and inner_width_m");
        faults.unwanted("tank.inner_length_m", innerLengthM, !box, "an upright_cylinder has none: give shape: box");
        faults.unwanted("tank.inner_width_m", innerWidthM, !box, "an upright_cylinder has none: give shape: box");
        faults.unwanted("tank.box_azimuth_deg", boxAzimuthDeg, !box, "an upright_cylinder has none: give shape: box");
        boolean indoors = place == Spot.INDOORS;
        faults.needed("tank.room_c", roomC, indoors, "needed for place: indoors");
        faults.unwanted("tank.room_c", roomC, !indoors, "only a tank with place: indoors has a room");
        faults.unwanted("tank.exposure_factor", exposureFactor, indoors, "there is no wind indoors");
        faults.unwanted(
                "tank.floor_exposure_factor_most", floorExposureFactorMost, indoors, "there is no wind indoors");
    }

    Tank tank() {
        return new Tank(inside(), liquidDepthM, headspaceHeightM, standsOn, where());
    }

    private Shape inside() {
        return shape == Form.BOX
                ? new Shape.Box(innerLengthM.orElseThrow(), innerWidthM.orElseThrow(), boxAzimuthDeg.orElse(0.0))
                : new Shape.UprightCylinder(innerDiameterM.orElseThrow());
    }

    private Place where() {
        if (place == Spot.INDOORS) {
            return new Place.Indoors(roomC.orElseThrow());
        }
        Exposure exposure = Exposure.valueOf(place.name().toUpperCase(Locale.ROOT));
        double factor = exposureFactor.orElse(exposure.usualWindFactor());
        return new Place.Outdoors(exposure, factor, Math.min(factor, floorExposureFactorMost.orElse(factor)));
    }
}
