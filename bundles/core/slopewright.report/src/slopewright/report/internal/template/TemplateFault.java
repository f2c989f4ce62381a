package slopewright.report.internal.template;

import org.xml.sax.SAXParseException;

import slopewright.messages.Message;
import slopewright.messages.Reasoned;
import slopewright.report.ReportException;

/** What may not stand in a template, found while it is read. */
final class TemplateFault extends SAXParseException implements Reasoned {

    private static final long serialVersionUID = 1L;

    private final transient Message reason;

    /**
     * Makes a fault.
     *
     * @param reason what is wrong
     * @param line   where, from 1
     */
    TemplateFault(Message reason, int line) {
        super(reason.key(), null, null, line, 1);
        this.reason = reason;
    }

    @Override
    public Message reason() {
        return reason;
    }

    @Override
    public String getMessage() {
        return reason.english();
    }

    /** Returns what a file of a template is refused with. */
    static ReportException in(String file, Message reason, Throwable cause) {
        return new ReportException(Message.said("template.at-file", file, reason), cause);
    }

    /** Returns what a file of a template is refused with, the line counted from 1. */
    static ReportException in(String file, int line, Message reason, Throwable cause) {
        return new ReportException(Message.said("template.at-line", file, Math.max(1, line), reason), cause);
    }
}
