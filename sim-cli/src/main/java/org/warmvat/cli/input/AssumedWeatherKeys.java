package org.warmvat.cli.input;

import com.fasterxml.jackson.annotation.JsonProperty;
import org.warmvat.design.AssumedWeather;

/** The block {@code assumed_weather}. */
record AssumedWeatherKeys(
        @JsonProperty("wind_m_s") @Key(says = "Wind at 10 m", unit = "m/s", least = 0, most = 30, usual = "3")
        double windMPerS,

        @JsonProperty("relative_humidity") @Key(says = "Relative humidity", least = 0.01, most = 1, usual = "0.75")
        double relativeHumidity,

        @JsonProperty("cloud_fraction") @Key(says = "Cloud cover", least = 0, most = 1, usual = "0.5")
        double cloudFraction) {

    AssumedWeather assumed() {
        return new AssumedWeather(windMPerS, relativeHumidity, cloudFraction);
    }
}
