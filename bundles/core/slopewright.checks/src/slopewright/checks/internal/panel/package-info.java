/** Rules about panels. */
package slopewright.checks.internal.panel;
