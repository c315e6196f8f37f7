package org.warmvat.cli.page;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.LocalDateTime;
import java.util.Base64;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.warmvat.cli.answer.Document;
import org.warmvat.cli.answer.Page;
import org.warmvat.cli.answer.folder.ResultsFolder;

/** An answer as a page of its own and as the folder that the command line writes, in one file. */
final class ReportFiles {

    private static final Pattern STYLE = Pattern.compile("(?s)<style>(.*?)</style>");
    private static final LocalDateTime ALWAYS = LocalDateTime.of(2025, 1, 1, 0, 0);

    private ReportFiles() {}

    /** The report. Its own style is allowed by its hash and nothing else is: no script, nothing from elsewhere. */
    static Reply report(Document document) {
        byte[] page = Page.bytes(document);
        Matcher style = STYLE.matcher(new String(page, StandardCharsets.UTF_8));
        String allowed = style.find() ? "'sha256-" + hash(style.group(1)) + "'" : "'none'";
        String policy = "default-src 'none'; style-src " + allowed
                + "; img-src data:; base-uri 'none'; form-action 'none'; frame-ancestors 'none'";
        return new Reply(200, Reply.HTML, policy, page);
    }

    private static String hash(String text) {
        try {
            byte[] hash = MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
            return Base64.getEncoder().encodeToString(hash);
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("every Java platform has SHA-256", impossible);
        }
    }

    /** All files of the folder; the same answer gives the same bytes. */
    static Reply zip(Document document) {
        String folder = "warmvat-" + document.heading().command().replace(' ', '-') + "/";
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
            for (Map.Entry<String, byte[]> file : new TreeMap<>(ResultsFolder.files(document)).entrySet()) {
                ZipEntry entry = new ZipEntry(folder + file.getKey());
                entry.setTimeLocal(ALWAYS);
                zip.putNextEntry(entry);
                zip.write(file.getValue());
                zip.closeEntry();
            }
        } catch (IOException impossible) {
            throw new UncheckedIOException("writing to memory failed", impossible);
        }
        return Reply.of("application/zip", bytes.toByteArray());
    }
}
