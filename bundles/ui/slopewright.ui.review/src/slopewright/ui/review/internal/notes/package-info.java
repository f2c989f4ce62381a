/** The review of a project in the window: its notes as a tree, and the dialog that asks for one more. */
package slopewright.ui.review.internal.notes;
