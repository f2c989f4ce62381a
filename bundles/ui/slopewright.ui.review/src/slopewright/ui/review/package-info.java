/** Findings, quick fixes, comparison and the report wizard. */
package slopewright.ui.review;
