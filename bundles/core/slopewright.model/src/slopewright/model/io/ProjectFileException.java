package slopewright.model.io;

import slopewright.messages.Message;
import slopewright.messages.Reasoned;

/** A project file that cannot be read or written. Its reason names file, line and what is wrong in one line. */
public final class ProjectFileException extends Exception implements Reasoned {

    private static final long serialVersionUID = 1L;

    private final String file;
    private final int line;
    private final int column;
    private final transient Message fault;

    /**
     * Makes the exception.
     *
     * @param file   name of the file
     * @param line   line in it, counted from 1; 0 where the whole file is meant
     * @param column column in the line, counted from 1; 0 where the whole line is meant
     * @param fault  what is wrong
     * @param cause  the fault beneath, null for none
     */
    public ProjectFileException(String file, int line, int column, Message fault, Throwable cause) {
        super(cause);
        this.file = file;
        this.line = Math.max(0, line);
        this.column = line > 0 ? Math.max(0, column) : 0;
        this.fault = fault;
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

    /** Returns what is wrong, without file and line. */
    public Message fault() {
        return fault;
    }

    /** Returns file, line and what is wrong. */
    @Override
    public Message reason() {
        return line > 0 ? Message.said("project-file.at-line", file, line, fault) : Message.said("project-file.at-file", file, fault);
    }

    @Override
    public String getMessage() {
        return reason().english();
    }
}
