package slopewright.model.io;

/** A project file that can not be read or written. The message names file, line and reason in one line. */
public final class ProjectFileException extends Exception {

    private static final long serialVersionUID = 1L;

    private final String file;
    private final int line;
    private final String reason;

    /**
     * Makes the exception.
     *
     * @param file   name of the file
     * @param line   line in it, 0 where the whole file is meant
     * @param reason what is wrong
     * @param cause  the fault beneath, null for none
     */
    public ProjectFileException(String file, int line, String reason, Throwable cause) {
        super(line > 0 ? file + ":" + line + ": " + reason : file + ": " + reason, cause);
        this.file = file;
        this.line = line;
        this.reason = reason;
    }

    /** Returns the name of the file. */
    public String file() {
        return file;
    }

    /** Returns the line, 0 where the whole file is meant. */
    public int line() {
        return line;
    }

    /** Returns what is wrong. */
    public String reason() {
        return reason;
    }
}
