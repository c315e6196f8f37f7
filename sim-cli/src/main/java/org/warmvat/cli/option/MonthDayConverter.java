package org.warmvat.cli.option;

import java.time.DateTimeException;
import java.time.MonthDay;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads a day of the year such as 03-01. */
public final class MonthDayConverter implements ITypeConverter<MonthDay> {

    @Override
    public MonthDay convert(String text) {
        try {
            if (text.matches("\\d\\d-\\d\\d")) {
                return MonthDay.parse("--" + text);
            }
        } catch (DateTimeException noSuchDay) {
            throw wrong(text);
        }
        throw wrong(text);
    }

    private static TypeConversionException wrong(String text) {
        return new TypeConversionException("\"" + text + "\", expected a day of the year as MM-DD, such as 03-01");
    }
}
