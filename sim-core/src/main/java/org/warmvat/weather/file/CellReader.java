package org.warmvat.weather.file;

import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.util.Locale;
import java.util.Set;
import org.warmvat.weather.Quantity;
import org.warmvat.weather.WeatherRefused;

/** Reads the values of cells in a column's own unit and holds them against its physical limits. */
final class CellReader {
    /** What services write where they have no value. */
    private static final Set<Double> CODES = Set.of(999.0, 9999.0, 9900.0, 99999.0);

    private final FileFaults faults;

    CellReader(FileFaults faults) {
        this.faults = faults;
    }

    /** The value of a cell, NaN when it is blank or refused. */
    double value(int line, Quantity quantity, String cell) throws WeatherRefused {
        String text = cell.strip();
        if (text.isEmpty()) {
            return Double.NaN;
        }
        if (!Decimal.isNumber(text)) {
            faults.add(
                    line,
                    quantity.key() + " " + FileFaults.quoted(text)
                            + ", expected a number with a decimal point or nothing");
            return Double.NaN;
        }
        return limited(line, quantity, Decimal.value(text), text);
    }

    /** The value when it lies within the limits, otherwise NaN and a fault that shows the cell as it was found. */
    double limited(int line, Quantity quantity, double value, String found) throws WeatherRefused {
        if (value >= quantity.least() && value <= quantity.most()) {
            return value;
        }
        faults.add(
                line,
                quantity.key() + " " + FileFaults.quoted(found) + ", expected " + plain(quantity.least()) + " to "
                        + plain(quantity.most()) + hint(quantity, value));
        return Double.NaN;
    }

    private static String degreesHint(Quantity quantity, double value) {
        return value > 200 && value < 340
                ? " (is this kelvin?)"
                : value > quantity.most() && value < 130 ? " (is this Fahrenheit?)" : "";
    }

    /** The unit that was probably meant. */
    private static String hint(Quantity quantity, double value) {
        if (CODES.contains(Math.abs(value))) {
            return " (a code for no value? a layout names such codes under missing)";
        }
        return switch (quantity) {
            case AIR, DEW_POINT, GROUND -> degreesHint(quantity, value);
            case RELATIVE_HUMIDITY, CLOUD ->
                value > 1 && value <= 100 ? " (a fraction: is this percent, tenths or eighths?)" : "";
            case WIND -> value > 60 ? " (is this km/h or knots?)" : "";
            case PRESSURE -> value > 40_000 ? " (is this Pa?)" : value > 40 && value < 120 ? " (is this kPa?)" : "";
            case GLOBAL, BEAM, DIFFUSE -> value > quantity.most() && value < 5500 ? " (is this kJ/m2?)" : "";
            case LONGWAVE -> value > 700 && value < 2600 ? " (is this kJ/m2?)" : "";
        };
    }

    private static String plain(double value) {
        return new DecimalFormat("0.###", DecimalFormatSymbols.getInstance(Locale.ROOT)).format(value);
    }
}
