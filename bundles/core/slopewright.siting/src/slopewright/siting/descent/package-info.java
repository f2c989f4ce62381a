/** Slopes that follow from speed and rate of descent, and the published table of them. */
package slopewright.siting.descent;
