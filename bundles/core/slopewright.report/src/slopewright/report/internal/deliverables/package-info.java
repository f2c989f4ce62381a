/** The kinds of files that a project is handed over as, one class a kind, registered as services. */
package slopewright.report.internal.deliverables;
