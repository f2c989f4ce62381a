package slopewright.model.internal;

import java.util.Optional;
import java.util.concurrent.CompletableFuture;

/**
 * By what a file is known again: the SHA-256 of what it held. That of a small content is worked out when somebody asks for it, which a
 * check from the command line does not; that of a large one at once, beside the thread that reads it.
 */
public final class SeenFile {

    private static final int LARGE_BYTES = 1 << 20;

    private final CompletableFuture<String> beside;
    private byte[] content;
    private String sha256;

    private SeenFile(byte[] content, CompletableFuture<String> beside) {
        this.content = content;
        this.beside = beside;
    }

    /** Notes what a file holds. The bytes are not copied and must not be changed. */
    public static SeenFile holding(byte[] content) {
        return content.length < LARGE_BYTES ? new SeenFile(content, null)
                : new SeenFile(null, CompletableFuture.supplyAsync(() -> FileDigest.sha256(content)));
    }

    /** Returns the SHA-256 of the content, 64 hexadecimal digits; waits for it where it is being worked out. */
    public synchronized String sha256() {
        if (sha256 == null) {
            sha256 = Optional.ofNullable(beside).map(CompletableFuture::join).orElseGet(() -> FileDigest.sha256(content));
            content = null;
        }
        return sha256;
    }
}
