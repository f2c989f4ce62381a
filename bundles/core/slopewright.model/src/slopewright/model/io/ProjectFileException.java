package slopewright.model.io;

/** A project file that cannot be read or written. The message names file, line and reason in one line. */
public final class ProjectFileException extends Exception {

    private static final long serialVersionUID = 1L;

    private final String file;
    private final int line;
    private final int column;
    private final String reason;

    /**
     * Makes the exception.
     *
     * @param file   name of the file
     * @param line   line in it, counted from 1; 0 where the whole file is meant
     * @param column column in the line, counted from 1; 0 where the whole line is meant
     * @param reason what is wrong
     * @param cause  the fault beneath, null for none
     */
    public ProjectFileException(String file, int line, int column, String reason, Throwable cause) {
        super(line > 0 ? file + ":" + line + ": " + reason : file + ": " + reason, cause);
        this.file = file;
        this.line = Math.max(0, line);
        this.column = line > 0 ? Math.max(0, column) : 0;
        this.reason = reason;
    }

    /** Returns the name of the file. */
    public String file() {
        return file;
    }

    /** Returns the line, counted from 1; 0 where the whole file is meant. */
    public int line() {
        return line;
    }

    /** Returns the column, counted from 1, at which the reader stopped; 0 where the whole line is meant. */
    public int column() {
        return column;
    }

    /** Returns what is wrong. */
    public String reason() {
        return reason;
    }
}
