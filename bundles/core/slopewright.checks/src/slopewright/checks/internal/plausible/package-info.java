/** Rules that find what cannot be true, or what two entries say differently. */
package slopewright.checks.internal.plausible;
