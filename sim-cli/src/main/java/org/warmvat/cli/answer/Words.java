package org.warmvat.cli.answer;

import java.time.LocalDate;
import java.time.Month;
import java.time.YearMonth;
import java.time.format.TextStyle;
import java.util.List;
import java.util.Locale;

/** Numbers, dates and lists as they stand in sentences and tables: rounded for reading, the same in every locale. */
final class Words {

    private Words() {}

    /** A number with about three figures: whole from 100 up, one decimal from 10 up, two below. */
    static String number(double value) {
        double size = Math.abs(value);
        String digits = size >= 99.95 ? "%.0f" : size >= 9.995 ? "%.1f" : "%.2f";
        return withoutMinusZero(String.format(Locale.ROOT, digits, value));
    }

    /** A number with a fixed count of decimals. */
    static String fixed(double value, int decimals) {
        return withoutMinusZero(String.format(Locale.ROOT, "%." + decimals + "f", value));
    }

    private static String withoutMinusZero(String text) {
        return text.startsWith("-0") && text.matches("-0(\\.0+)?") ? text.substring(1) : text;
    }

    static String kWh(double value) {
        return number(value) + " kWh";
    }

    static String celsius(double value) {
        return fixed(value, 1) + " °C";
    }

    /** Hours, with a decimal only where they are few. */
    static String hours(double value) {
        return value >= 9.95 || value == Math.rint(value) ? fixed(value, 0) : fixed(value, 1);
    }

    /** A share in per cent; one that rounds to nothing or to all without being it says so. */
    static String percent(double fraction) {
        double percent = 100 * fraction;
        if (percent > 0 && percent < 0.05) {
            return "less than 0.1 %";
        }
        if (percent >= 99.95 && percent < 100) {
            return "more than 99.9 %";
        }
        boolean nearAnEnd = percent < 9.95 || (percent >= 99.5 && percent < 100);
        return fixed(percent, nearAnEnd ? 1 : 0) + " %";
    }

    /** The same in a table: {@code <0.1 %}. */
    static String percentCell(double fraction) {
        return percent(fraction).replace("less than ", "<").replace("more than ", ">");
    }

    /** A text whose units stay on the line of their numbers. */
    static String unbroken(String text) {
        return text.replaceAll("(?<=\\d) (?=kWh|%|°C|Nm³)", "\u00a0");
    }

    /** A day such as 14 January, with its year where the run is longer than one. */
    static String day(LocalDate date, boolean withYear) {
        return date.getDayOfMonth() + " " + month(date.getMonth()) + (withYear ? " " + date.getYear() : "");
    }

    static String month(Month month) {
        return month.getDisplayName(TextStyle.FULL, Locale.ENGLISH);
    }

    static String month(YearMonth month) {
        return month(month.getMonth()) + " " + month.getYear();
    }

    /** Items in a row: {@code a, b and c}. */
    static String list(List<String> items) {
        int last = items.size() - 1;
        return last < 1
                ? String.join("", items)
                : String.join(", ", items.subList(0, last)) + " and " + items.get(last);
    }
}
