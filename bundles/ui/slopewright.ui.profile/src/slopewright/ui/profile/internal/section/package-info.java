/** The vertical section along the approach. */
package slopewright.ui.profile.internal.section;
