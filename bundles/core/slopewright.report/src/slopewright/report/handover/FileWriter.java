package slopewright.report.handover;

import slopewright.report.ReportException;

/** Makes the bytes of a file. */
@FunctionalInterface
public interface FileWriter {

    /**
     * Makes the bytes.
     *
     * @param source  the project, not changed, with its one evaluation
     * @param options date, paper and language
     * @return the file; the same input gives the same bytes
     * @throws ReportException                    where it cannot be laid out
     * @throws slopewright.siting.SitingException where something is missing; the message says what
     * @throws IllegalArgumentException           where a rule set is unknown or there is nothing to show
     */
    byte[] write(HandoverSource source, HandoverOptions options) throws ReportException;
}
