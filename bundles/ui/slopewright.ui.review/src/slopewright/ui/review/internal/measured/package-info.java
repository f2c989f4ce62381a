/** The table of measured units. */
package slopewright.ui.review.internal.measured;
