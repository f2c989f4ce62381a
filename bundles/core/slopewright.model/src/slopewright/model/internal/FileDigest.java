package slopewright.model.internal;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.DigestInputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** By what contents of files are told apart. */
public final class FileDigest {

    private static final int BUFFER = 1 << 16;

    private FileDigest() {
    }

    private static MessageDigest digest() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }

    /** Returns the SHA-256 of a content, 64 hexadecimal digits. */
    public static String sha256(byte[] bytes) {
        return HexFormat.of().formatHex(digest().digest(bytes));
    }

    /**
     * Returns the SHA-256 of a file of any length, 64 hexadecimal digits.
     *
     * @throws IOException where it cannot be read
     */
    public static String sha256(Path file) throws IOException {
        try (InputStream in = Files.newInputStream(file); DigestInputStream read = new DigestInputStream(in, digest())) {
            byte[] buffer = new byte[BUFFER];
            while (read.read(buffer) >= 0) {
                continue;
            }
            return HexFormat.of().formatHex(read.getMessageDigest().digest());
        }
    }
}
