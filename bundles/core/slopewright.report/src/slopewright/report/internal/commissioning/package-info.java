/** The commissioning sheet of an installed indicator. */
package slopewright.report.internal.commissioning;
