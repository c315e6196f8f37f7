package org.warmvat.question.sizes;

import java.math.BigDecimal;
import java.util.Optional;
import org.warmvat.design.keys.Shown;

/**
 * How one number of the design follows the tank's volume.
 *
 * @param key path of the number
 * @param power of the ratio of volumes it follows, 0 for none; empty for a number that follows the tank's steady need of heat
 */
public record ScalingRule(String key, Optional<Double> power) {

    /** Follows the need of heat. */
    static ScalingRule byNeed(String key) {
        return new ScalingRule(key, Optional.empty());
    }

    /** Follows a power of the volume. */
    static ScalingRule byVolume(String key, double power) {
        return new ScalingRule(key, Optional.of(power));
    }

    /**
     * Reads {@code key=power}, {@code key=need} or {@code key=fixed}.
     *
     * @throws IllegalArgumentException when it is none of them
     */
    public static ScalingRule parse(String text) {
        int equals = text.indexOf('=');
        String key = equals < 0 ? text : text.substring(0, equals).strip();
        String how = equals < 0 ? "" : text.substring(equals + 1).strip();
        if (how.equals("need")) {
            return byNeed(key);
        }
        if (how.equals("fixed")) {
            return byVolume(key, 0);
        }
        if (!key.isEmpty() && how.matches("[+-]?[0-9]{1,2}(\\.[0-9]{1,9})?")) {
            return byVolume(key, new BigDecimal(how).doubleValue());
        }
        throw new IllegalArgumentException(Shown.quoted(text)
                + ", expected key=need, key=fixed or key=power, such as solar.area_m2=1 or mixer.torque_nm=1.67");
    }

    /** The factor for a ratio of volumes and of needs. */
    double factor(double volumes, double needs) {
        return power.map(p -> Math.pow(volumes, p)).orElse(needs);
    }

    /** The rule in words. */
    public String words() {
        if (power.isEmpty()) {
            return "with the need of heat";
        }
        double p = power.get();
        if (p == 0) {
            return "fixed";
        }
        return p == 1
                ? "with the volume"
                : "with the volume to the power of " + Shown.number(Math.round(p * 1000) / 1000.0);
    }
}
