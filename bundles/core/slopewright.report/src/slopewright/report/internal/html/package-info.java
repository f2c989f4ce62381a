/** The markup of a document with its words and numbers in one language: every text is escaped, every sentence comes from the catalogues. */
package slopewright.report.internal.html;
