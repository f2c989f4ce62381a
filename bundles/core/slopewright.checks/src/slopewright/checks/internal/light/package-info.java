/** Rules about the light of the equipment against the printed intensities. */
package slopewright.checks.internal.light;
