package org.warmvat.cli.answer;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/** JSON as this program writes it: UTF-8, indented, numbers with all their digits. */
final class Json {

    /** Writes one document. */
    interface Body {
        void write(JsonGenerator json) throws IOException;
    }

    private Json() {}

    static byte[] bytes(Body body) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (JsonGenerator json = new JsonFactory().createGenerator(bytes)) {
            DefaultIndenter indent = new DefaultIndenter("  ", "\n");
            json.setPrettyPrinter(
                    new DefaultPrettyPrinter().withObjectIndenter(indent).withArrayIndenter(indent));
            body.write(json);
            json.writeRaw('\n');
        } catch (IOException impossible) {
            throw new UncheckedIOException("writing to memory failed", impossible);
        }
        return bytes.toByteArray();
    }

    /** A number; null for one that is absent or infinite, which JSON cannot say. */
    static void number(JsonGenerator json, String key, OptionalDouble value) throws IOException {
        if (value.isEmpty() || Double.isInfinite(value.getAsDouble())) {
            json.writeNullField(key);
        } else if (value.getAsDouble() == 0) {
            json.writeNumberField(key, 0); // neither 0.0 nor -0.0
        } else {
            json.writeNumberField(key, value.getAsDouble());
        }
    }

    /** A number, text, truth, list or map; null for what is not there. */
    static void value(JsonGenerator json, String key, Object value) throws IOException {
        if (value instanceof Number number) {
            number(json, key, OptionalDouble.of(number.doubleValue()));
            return;
        }
        json.writeFieldName(key);
        bare(json, value);
    }

    private static void bare(JsonGenerator json, Object value) throws IOException {
        if (value == null) {
            json.writeNull();
        } else if (value instanceof Map<?, ?> map) {
            json.writeStartObject();
            for (Map.Entry<?, ?> entry : map.entrySet()) {
                value(json, (String) entry.getKey(), entry.getValue());
            }
            json.writeEndObject();
        } else if (value instanceof List<?> list) {
            json.writeStartArray();
            for (Object entry : list) {
                bare(json, entry);
            }
            json.writeEndArray();
        } else if (value instanceof Number number) {
            json.writeNumber(number.doubleValue());
        } else if (value instanceof Boolean truth) {
            json.writeBoolean(truth);
        } else {
            json.writeString((String) value);
        }
    }
}
