/** The chart of the landing directions round a helipad on the screen, and what is read and taken there. */
package slopewright.ui.profile.internal.directions;
