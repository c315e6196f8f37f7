package org.warmvat.cli.file;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.BooleanNode;
import com.fasterxml.jackson.databind.node.DoubleNode;
import com.fasterxml.jackson.databind.node.LongNode;
import com.fasterxml.jackson.databind.node.NullNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * What an unquoted YAML word means here: a decimal number, true or false, nothing, or text; and which words are refused because YAML
 * readers differ about them. A clock time, which some readers count in sixties, is text here and never a number.
 */
final class PlainScalar {

    private static final Pattern WHOLE = Pattern.compile("[-+]?(0|[1-9][0-9]*)");
    private static final Pattern DECIMAL =
            Pattern.compile("[-+]?(0|[1-9][0-9]*)?(\\.[0-9]+|(?<=[0-9])\\.)?([eE][-+]?[0-9]+)?");
    private static final Pattern EXPONENT_ONLY = Pattern.compile("[-+]?[eE].*");
    private static final Pattern LEADING_ZERO =
            Pattern.compile("[-+]?0[0-9]+(\\.[0-9]*)?([eE][-+]?[0-9]+)?|[-+]?0[oO][0-7]+");
    private static final Pattern BASE = Pattern.compile("[-+]?0([xX][0-9a-fA-F_]+|[bB][01_]+)");
    private static final Pattern UNDERSCORED =
            Pattern.compile("[-+]?[0-9][0-9_]*_[0-9_]*(\\.[0-9_]*)?([eE][-+]?[0-9]+)?");
    private static final Pattern COMMA = Pattern.compile("[-+]?[0-9]+,[0-9]+");
    private static final Pattern NOT_FINITE = Pattern.compile("[-+]?\\.?(inf|infinity)|\\.?nan");
    private static final Pattern SAYS_YES_OR_NO = Pattern.compile("yes|no|y|n|true|false");

    private PlainScalar() {}

    /** The value of an unquoted word that is no trap. */
    static JsonNode value(String raw) {
        if (raw.isEmpty() || raw.equals("~") || raw.equals("null")) {
            return NullNode.getInstance();
        }
        if (raw.equals("true") || raw.equals("false")) {
            return BooleanNode.valueOf(raw.equals("true"));
        }
        if (!isNumber(raw)) {
            return TextNode.valueOf(raw);
        }
        double value = Double.parseDouble(raw);
        return WHOLE.matcher(raw).matches() && Math.abs(value) < 1e15
                ? LongNode.valueOf((long) value)
                : DoubleNode.valueOf(value);
    }

    /** What is wrong with an unquoted word, and what to write instead; empty where nothing is. */
    static Optional<String> trap(String raw) {
        String low = raw.toLowerCase(Locale.ROOT);
        if (LEADING_ZERO.matcher(raw).matches()) {
            return Optional.of(raw
                    + ": some readers take a leading zero as octal, expected a number without it, or quotes for text");
        }
        if (BASE.matcher(raw).matches()) {
            return Optional.of(raw + ", expected a decimal number, or quotes for text");
        }
        if (UNDERSCORED.matcher(raw).matches()) {
            return Optional.of(raw + ", expected a number without underscores, or quotes for text");
        }
        if (COMMA.matcher(raw).matches()) {
            return Optional.of(raw + ", expected a decimal point: " + raw.replace(',', '.'));
        }
        if (NOT_FINITE.matcher(low).matches()) {
            return Optional.of(raw + ", expected a finite number, or quotes for text");
        }
        if (SAYS_YES_OR_NO.matcher(low).matches() && !raw.equals("true") && !raw.equals("false")) {
            return Optional.of(
                    raw
                            + ": readers differ on whether this is true, false or text, expected true, false, or quotes for text");
        }
        if (isNumber(raw) && Double.isInfinite(Double.parseDouble(raw))) {
            return Optional.of(raw + ", expected a number that is not so large");
        }
        return Optional.empty();
    }

    private static boolean isNumber(String raw) {
        return DECIMAL.matcher(raw).matches()
                && raw.chars().anyMatch(c -> c >= '0' && c <= '9')
                && !EXPONENT_ONLY.matcher(raw).matches();
    }
}
