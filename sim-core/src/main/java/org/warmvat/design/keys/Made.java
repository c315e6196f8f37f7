package org.warmvat.design.keys;

import java.time.DateTimeException;
import java.time.MonthDay;
import java.util.List;
import java.util.Map;

/** Values of Java types from the words of a file. */
final class Made {

    /** Passes as a name and as a time of day. */
    private static final String ANY_TEXT = "00:00";

    /** Passes as a day. */
    static final String ANY_DAY = "01-01";

    private Made() {}

    /** The constant of an enum that a file calls by a word. */
    static Object constant(Class<?> type, String word) {
        for (Object constant : type.getEnumConstants()) {
            if (Slot.word(constant).equals(word)) {
                return constant;
            }
        }
        throw new IllegalArgumentException(word + " is none of " + type.getSimpleName());
    }

    /** What a type makes of a text: a switch, a day of the year, a time of day in seconds, or by its own factory. */
    static Object ofText(Class<?> type, Object value) {
        if (type == Boolean.class) {
            return value.equals("on") || value.equals(true);
        }
        if (type == MonthDay.class) {
            return monthDay((String) value);
        }
        if (type == double.class) {
            String time = (String) value;
            return Integer.parseInt(time.substring(0, 2)) * 3600.0 + Integer.parseInt(time.substring(3, 5)) * 60.0;
        }
        return by(type, "ofText", value instanceof List ? List.class : String.class, value);
    }

    /** What a static factory of a type makes of a value; its refusals are passed on. */
    static Object by(Class<?> type, String factory, Class<?> from, Object value) {
        try {
            return type.getMethod(factory, from).invoke(null, value);
        } catch (ReflectiveOperationException e) {
            if (e.getCause() instanceof Refused refused) {
                throw refused;
            }
            throw new IllegalStateException(type + " is not made from " + from, e);
        }
    }

    private static MonthDay monthDay(String text) {
        try {
            return MonthDay.parse("--" + text);
        } catch (DateTimeException noSuchDay) {
            throw new Refused("", "\"" + text + "\", expected a day of the year as MM-DD, such as 03-10");
        }
    }

    /** A value as a file would write it, which passes where none was given or a wrong one. */
    static Object placeholder(Slot slot) {
        if (slot.real() || slot.whole()) {
            return slot.bounds().most();
        }
        if (slot.type().isEnum()) {
            return Slot.word(slot.type().getEnumConstants()[0]);
        }
        if (slot.type() == MonthDay.class) {
            return ANY_DAY;
        }
        return slot.text() ? ANY_TEXT : Map.of();
    }
}
