/** The chapters of the report, each from the one evaluation and the one check of the project. */
package slopewright.report.internal.chapters;
