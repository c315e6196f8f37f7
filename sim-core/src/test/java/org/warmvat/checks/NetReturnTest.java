package org.warmvat.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;

/**
 * The main job's outcome as the trade knows it (common practice, no source): a poorly insulated tank with a plain electric
 * element and a fast motor ends with a negative net return, a well insulated, slowly stirred one does not.
 */
class NetReturnTest {

    /** Within 15 kWh: the page gives them to ten, and the fast engine may move by 0.1 % of some thousand. */
    @Test
    void thePairStandsOnTheTwoSidesOfNothing() {
        double poor =
                NetReturn.kWh(NetReturn.tank(NetReturn.POOR_FOAM_MM, NetReturn.fastMotor(NetReturn.POOR_MOTOR_W)));
        double good = NetReturn.kWh(NetReturn.tank(NetReturn.GOOD_FOAM_MM, NetReturn.slowPaddle()));
        assertTrue(poor < 0 && good > 0);
        assertEquals(NetReturn.POOR_NET_KWH, poor, 15);
        assertEquals(NetReturn.GOOD_NET_KWH, good, 15);
    }

    @Test
    void aMillimetreOfFoamTurnsTheSign() {
        assertTrue(NetReturn.kWh(NetReturn.tank(NetReturn.TURNING_FOAM_MM - 0.5, NetReturn.slowPaddle())) < 0);
        assertTrue(NetReturn.kWh(NetReturn.tank(NetReturn.TURNING_FOAM_MM + 0.5, NetReturn.slowPaddle())) > 0);
    }

    @Test
    void fourWattsOfMotorTurnTheSign() {
        double watts = NetReturn.TURNING_MOTOR_W;
        assertTrue(NetReturn.kWh(NetReturn.tank(NetReturn.GOOD_FOAM_MM, NetReturn.fastMotor(watts - 2))) > 0);
        assertTrue(NetReturn.kWh(NetReturn.tank(NetReturn.GOOD_FOAM_MM, NetReturn.fastMotor(watts + 2))) < 0);
    }

    /** The search by halving; takes some minutes, so only when asked for. */
    @Test
    @EnabledIfSystemProperty(named = "netreturn.search", matches = "true")
    void theTurningPointsFoundAnew() {
        assertEquals(
                NetReturn.TURNING_FOAM_MM,
                NetReturn.turning(mm -> NetReturn.kWh(NetReturn.tank(mm, NetReturn.slowPaddle())), 5, 150),
                0.3);
        assertEquals(
                NetReturn.TURNING_FOAM_WITH_MOTOR_MM,
                NetReturn.turning(
                        mm -> NetReturn.kWh(NetReturn.tank(mm, NetReturn.fastMotor(NetReturn.POOR_MOTOR_W))), 5, 150),
                0.3);
        assertEquals(
                NetReturn.TURNING_MOTOR_W,
                NetReturn.turning(
                        w -> NetReturn.kWh(NetReturn.tank(NetReturn.GOOD_FOAM_MM, NetReturn.fastMotor(w))), 600, 5),
                1);
    }
}
