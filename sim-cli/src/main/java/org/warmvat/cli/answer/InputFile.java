package org.warmvat.cli.answer;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/**
 * An input a run was made from.
 *
 * @param role {@code design} or {@code weather}
 * @param file its name, without folders so that results do not depend on where it lay
 * @param sha256 hash of its bytes in hexadecimal digits
 */
public record InputFile(String role, String file, String sha256) {

    /** Names an input and hashes its bytes. */
    public static InputFile of(String role, String file, byte[] bytes) {
        return new InputFile(role, file, HexFormat.of().formatHex(sha256(bytes)));
    }

    private static byte[] sha256(byte[] bytes) {
        try {
            return MessageDigest.getInstance("SHA-256").digest(bytes);
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("every Java platform has SHA-256", impossible);
        }
    }
}
