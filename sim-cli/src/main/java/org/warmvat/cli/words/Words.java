package org.warmvat.cli.words;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.time.Month;
import java.time.YearMonth;
import java.time.format.TextStyle;
import java.util.List;
import java.util.Locale;

/** Numbers, dates and lists as they stand in sentences and tables: rounded for reading, the same in every locale. */
public final class Words {

    private static final double MANY_HOURS = 72;
    private static final double LITTLE_KWH = 0.1;

    private Words() {}

    /** A number with three significant digits. */
    public static String number(double value) {
        return Numerals.three(value);
    }

    /** A number with a fixed count of decimals. */
    public static String fixed(double value, int decimals) {
        return Numerals.fixed(value, decimals);
    }

    /** A number to the nearest whole. */
    public static String whole(double value) {
        return fixed(value, 0);
    }

    /** A number to a tenth. */
    public static String tenth(double value) {
        return fixed(value, 1);
    }

    /** An area. */
    public static String square(double m2) {
        return number(m2) + " m²";
    }

    /** An energy, to three figures. */
    public static String kWh(double value) {
        boolean little = value != 0 && Math.abs(value) < LITTLE_KWH;
        return (little ? bare(value) : number(value)) + " kWh";
    }

    /** Two digits are enough of what is next to nothing. */
    private static String bare(double value) {
        return new BigDecimal(value, new MathContext(2, RoundingMode.HALF_UP))
                .stripTrailingZeros()
                .toPlainString();
    }

    /** A solar fraction; a backup circuit that takes more heat than it gives leaves all to the sun. */
    public static String solarFraction(double share) {
        return share > 1 ? "100 % (the backup circuit takes more heat than it gives)" : percent(share);
    }

    /** A temperature, to a tenth. */
    public static String celsius(double value) {
        return fixed(value, 1) + " °C";
    }

    /** Hours, with a decimal only where they are few. */
    public static String hours(double value) {
        return value >= 9.95 || value == Math.rint(value) ? fixed(value, 0) : fixed(value, 1);
    }

    /** Hours, and days too where they are many. */
    public static String duration(double hours) {
        String text = hours < 9.95 ? fixed(hours, 1) : fixed(hours, 0);
        return text + " hours" + (hours >= MANY_HOURS ? " (" + fixed(hours / 24, 1) + " days)" : "");
    }

    /** A share in per cent; one that rounds to nothing or to all without being it says so. */
    public static String percent(double fraction) {
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
    public static String percentCell(double fraction) {
        return percent(fraction).replace("less than ", "<").replace("more than ", ">");
    }

    /** A text whose units stay on the line of their numbers. */
    public static String unbroken(String text) {
        return text.replaceAll("(?<=\\d) (?=kWh|%|°C|Nm³)", "\u00a0");
    }

    /** A day such as 14 January, with its year where the run is longer than one. */
    public static String day(LocalDate date, boolean withYear) {
        return date.getDayOfMonth() + " " + month(date.getMonth()) + (withYear ? " " + date.getYear() : "");
    }

    /** A month's name. */
    public static String month(Month month) {
        return month.getDisplayName(TextStyle.FULL, Locale.ENGLISH);
    }

    /** A month's name and its year. */
    public static String month(YearMonth month) {
        return month(month.getMonth()) + " " + month.getYear();
    }

    /** Items in a row: {@code a, b and c}. */
    public static String list(List<String> items) {
        int last = items.size() - 1;
        return last < 1
                ? String.join("", items)
                : String.join(", ", items.subList(0, last)) + " and " + items.get(last);
    }
}
