/** The set-up card of a portable unit. */
package slopewright.report.internal.card;
