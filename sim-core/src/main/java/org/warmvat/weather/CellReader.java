package org.warmvat.weather;

import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.util.Locale;

/** Reads the values of cells in a column's own unit and holds them against its physical limits. */
final class CellReader {
    private final Faults faults;

    CellReader(Faults faults) {
        this.faults = faults;
    }

    /** The value of a cell, NaN when it is blank or refused. */
    double value(int line, Quantity quantity, String cell) throws WeatherRefused {
        String text = cell.strip();
        if (text.isEmpty()) {
            return Double.NaN;
        }
        if (!Decimal.isNumber(text)) {
            faults.add(line, quantity.key() + " \"" + text + "\", expected a number with a decimal point or nothing");
            return Double.NaN;
        }
        return limited(line, quantity, Double.parseDouble(text), text);
    }

    /** The value when it lies within the limits, otherwise NaN and a fault that shows the cell as it was found. */
    double limited(int line, Quantity quantity, double value, String found) throws WeatherRefused {
        if (value >= quantity.least() && value <= quantity.most()) {
            return value;
        }
        String hint = quantity.least() == 0 && quantity.most() == 1 && value > 1 && value <= 100
                ? " (a fraction: is this percent?)"
                : "";
        faults.add(
                line,
                quantity.key() + " \"" + found + "\", expected " + plain(quantity.least()) + " to "
                        + plain(quantity.most()) + hint);
        return Double.NaN;
    }

    private static String plain(double value) {
        return new DecimalFormat("0.###", DecimalFormatSymbols.getInstance(Locale.ROOT)).format(value);
    }
}
