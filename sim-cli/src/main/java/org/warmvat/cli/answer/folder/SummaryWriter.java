package org.warmvat.cli.answer.folder;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.warmvat.cli.answer.Document;
import org.warmvat.cli.answer.Draft;
import org.warmvat.cli.answer.Grounds;
import org.warmvat.cli.answer.InputFile;
import org.warmvat.cli.words.Numerals;
import org.warmvat.network.Warning;

/** Sets an answer as {@code summary.json}: UTF-8, indented, numbers to six significant digits. */
public final class SummaryWriter {

    private SummaryWriter() {}

    /** The file, which also names all files beside it, by which a later run knows a folder of results. */
    public static byte[] bytes(Document document) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try {
            write(document, bytes);
        } catch (IOException impossible) {
            throw new UncheckedIOException("writing to memory failed", impossible);
        }
        return bytes.toByteArray();
    }

    /** Writes the file; the stream stays open. */
    public static void write(Document document, OutputStream out) throws IOException {
        try (JsonGenerator json = new JsonFactory().createGenerator(out)) {
            json.disable(JsonGenerator.Feature.AUTO_CLOSE_TARGET);
            DefaultIndenter indent = new DefaultIndenter("  ", "\n");
            json.setPrettyPrinter(
                    new DefaultPrettyPrinter().withObjectIndenter(indent).withArrayIndenter(indent));
            value(json, tree(document));
            json.writeRaw('\n');
        }
    }

    /** All that stands in it, with all digits. */
    public static Map<String, Object> tree(Document document) {
        Map<String, Object> summary = new LinkedHashMap<>();
        Grounds grounds = document.grounds();
        summary.put("program", Draft.row("name", "warmvat", "version", grounds.version()));
        summary.put(
                "inputs", grounds.inputs().stream().map(SummaryWriter::input).toList());
        summary.put("command", document.heading().command());
        summary.put("title", document.heading().title());
        summary.put("verdict", verdict(document.verdict()));
        summary.put(
                "answer",
                Stream.concat(
                                Stream.of(document.verdict().sentence()),
                                document.body().paragraphs().stream()
                                        .flatMap(paragraph -> paragraph.sentences().stream()))
                        .toList());
        summary.putAll(document.data().figures());
        summary.put(
                "warnings",
                grounds.warnings().stream().map(SummaryWriter::warning).toList());
        summary.put(
                "warning_figures",
                grounds.warnings().stream().map(SummaryWriter::warningFigure).toList());
        summary.put(
                "assumed",
                Stream.concat(grounds.assumed().stream(), grounds.defaults().stream())
                        .toList());
        summary.put("cautions", grounds.cautions());
        summary.put("result_files", ResultsFolder.names(document));
        return summary;
    }

    private static Map<String, Object> input(InputFile input) {
        return Draft.row("role", input.role(), "file", input.file(), "sha256", input.sha256());
    }

    private static Map<String, Object> verdict(Document.Verdict verdict) {
        return Draft.row("sentence", verdict.sentence(), "but", verdict.but());
    }

    private static Map<String, Object> warning(Warning warning) {
        return Draft.row(
                "key", warning.key(),
                "sentence", warning.sentence(),
                "count", warning.count(),
                "worst", warning.worst());
    }

    /** What version 0.1.0 wrote beside the bare sentences; goes with the next version. */
    private static Map<String, Object> warningFigure(Warning warning) {
        return Draft.row("kind", warning.key(), "count", warning.count(), "worst", warning.worst());
    }

    /** A number, text, truth, list or map; null for what is not there and for a number that JSON cannot say. */
    private static void value(JsonGenerator json, Object value) throws IOException {
        if (value instanceof Map<?, ?> map) {
            json.writeStartObject();
            for (Map.Entry<?, ?> entry : map.entrySet()) {
                json.writeFieldName((String) entry.getKey());
                value(json, entry.getValue());
            }
            json.writeEndObject();
        } else if (value instanceof List<?> list) {
            json.writeStartArray();
            for (Object entry : list) {
                value(json, entry);
            }
            json.writeEndArray();
        } else if (value instanceof Number number && Double.isFinite(number.doubleValue())) {
            json.writeNumber(Numerals.six(number.doubleValue()));
        } else if (value instanceof Boolean truth) {
            json.writeBoolean(truth);
        } else if (value == null || value instanceof Number) {
            json.writeNull();
        } else {
            json.writeString(value.toString());
        }
    }
}
