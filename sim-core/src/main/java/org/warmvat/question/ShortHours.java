package org.warmvat.question;

import org.warmvat.account.Account;
import org.warmvat.engine.Hours;
import org.warmvat.tank.KeyFigures;
import org.warmvat.tank.TankRun;

/** Hours of a run below the floor, where a run that is short for too long need not be finished. */
public final class ShortHours {

    private ShortHours() {}

    /** Hours short, or somewhat more than allowed. */
    public static double of(TankRun run, Hours hours, double allowed) {
        return run.account(
                        hours, Account.Keep.SUMS, (soFar, hour) -> soFar.soFar(KeyFigures.BELOW_FLOOR_HOURS) <= allowed)
                .whole()
                .of(KeyFigures.BELOW_FLOOR_HOURS);
    }
}
