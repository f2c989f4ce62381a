/** Rules about how far an indicator is seen. */
package slopewright.checks.internal.range;
