/** The pilot's briefing and the pocket sheet: parts of tables and lines, written as pages, for a telephone, or as plain text. */
package slopewright.report.internal.briefing;
