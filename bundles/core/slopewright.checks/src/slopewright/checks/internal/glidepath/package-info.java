/** Rules about an indicator beside an electronic glide path. */
package slopewright.checks.internal.glidepath;
