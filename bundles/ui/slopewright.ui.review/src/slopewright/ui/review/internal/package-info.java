/** Tables, details and remedies of the review views. */
package slopewright.ui.review.internal;
