/** The book of values beside the open project: what it says of each value, and how people decide and sign. */
package slopewright.ui.review.internal.book;
