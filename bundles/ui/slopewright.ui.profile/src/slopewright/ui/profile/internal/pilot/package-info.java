/** What the pilot sees from a point of the approach. */
package slopewright.ui.profile.internal.pilot;
