/** Rules about the circuits that feed the aids. */
package slopewright.checks.internal.circuit;
