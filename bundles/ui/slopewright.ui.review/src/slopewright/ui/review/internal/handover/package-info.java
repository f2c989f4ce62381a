/** The pages of the hand-over wizard. */
package slopewright.ui.review.internal.handover;
