/** The rows of the comparison with another version. */
package slopewright.ui.review.internal.versions;
