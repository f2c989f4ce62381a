/** The approach seen from the side and from the cockpit. */
package slopewright.ui.profile;
